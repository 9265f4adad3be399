using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Reserves;

/// <summary>What a shock or damper still has before it is pulled to its full length, mm; negative by as much as something else lets it be pulled beyond.</summary>
/// <remarks>As <see cref="ReserveQuantity"/>: no shock of the axle ends the travel here, so what is asked is whether a strap or the steering stops come first.</remarks>
public sealed class OpenReserveQuantity : PosedQuantity
{
    // A strap this near the centre plane, mm, holds both wheels.
    private const double CentreMm = 100;

    public override string Id => "open-reserve";

    public override string Name => "reserve before it is at full length";

    public override string Meaning =>
        "how much longer it could still get where it is longest, if nothing but straps and steering stops ended the travel; negative when it is what stops the wheel";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Shock ? null : $"{first.Name} is not a shock";

    /// <remarks>Where no strap on its side ends the droop a shock has to, and its reserve there says nothing.</remarks>
    public override string? Unread(VehicleMotion motion, Part first)
    {
        var shock = (PartForm.Shock)first.Form;
        return PairPlan.For(motion, shock.Upper.Body, shock.Lower.Body) is { Module: { } module } && !HasStrap(motion, module, shock)
            ? $"no limit strap of the {module.Axle.Name} axle on the side of {first.Name} is in the file: without one the shocks end its droop"
            : null;
    }

    private static bool HasStrap(VehicleMotion motion, AxleModule module, PartForm.Shock shock) => motion.Vehicle.Parts.Any(p =>
        p.Form is PartForm.LimitStrap strap && PairPlan.For(motion, strap.Upper.Body, strap.Lower.Body)?.Module?.Axle.Name == module.Axle.Name
        && IsOnSide(Y(motion, strap.Upper), Y(motion, shock.Upper)));

    private static bool IsOnSide(double strapMm, double shockMm) => Math.Abs(strapMm) <= CentreMm || strapMm > 0 == shockMm > 0;

    private static double Y(VehicleMotion motion, Place place) => place.At.At(motion.Parameters.Span).Y;

    private protected override PosedQuestions Ask(MeasureRequest request) =>
        ShockReserve.Ask(request, (shock, at, chord) => shock.Open.At(at) - chord, Settings(), isShortest: false);
}
