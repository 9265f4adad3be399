using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Reserves;

/// <summary>What a shock or damper still has before it is pulled to its full length, mm; negative by as much as something else lets it be pulled beyond.</summary>
/// <remarks>As <see cref="ReserveQuantity"/>: no shock of the axle ends the travel here, so what is asked is whether a strap or the steering stops come first.</remarks>
public sealed class OpenReserveQuantity : PosedQuantity
{
    public override string Id => "open-reserve";

    public override string Name => "reserve before it is at full length";

    public override string Meaning =>
        "how much longer it could still get where it is longest, if nothing but straps and steering stops ended the travel; negative when it is what stops the wheel";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => true;

    public override string? Refuses(Part first, Part? second) => first.Form is PartForm.Shock ? null : $"{first.Name} is not a shock";

    private protected override PosedQuestions Ask(MeasureRequest request) =>
        ShockReserve.Ask(request, (shock, at, chord) => shock.Open.At(at) - chord, Settings(), isShortest: false);
}
