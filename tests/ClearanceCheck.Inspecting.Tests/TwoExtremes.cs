using ClearanceCheck.Geometry;
using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>A quantity of the tests' own with a known smallest and largest value, give or take 2 mm, bounded on both sides.</summary>
internal sealed class TwoExtremes(double least, double most) : Quantity
{
    public override string Id => "preload";

    public override string Name => "preload";

    public override string Meaning => "how far a spring is pressed together";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsOfPair => false;

    public override bool IsWorstWhenLeast => true;

    public override bool BoundsBothSides => true;

    public override string? Refuses(Part first, Part? second) => null;

    public override Measurement Measure(MeasureRequest request) => Extreme(least, least - 0.1) with { OtherSide = Extreme(most, most + 0.1) };

    public override double? At(MeasureRequest request, ReadOnlySpan<double> pose) => least;

    private static Measurement Extreme(double value, double bound) => new()
    {
        Value = value,
        Bound = bound,
        Places = [new WorstPlace(value, [], Vector3d.Zero, Vector3d.Zero, 0.3, [], [], false)],
    };
}
