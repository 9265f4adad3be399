using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Tests;

/// <summary>A quantity of the tests' own that is bounded on both sides: a rule can limit either side, or both.</summary>
internal sealed class BothSidesTestQuantity : Quantity
{
    public override string Id => "test-pinch";

    public override string Name => "pinch of the tests";

    public override string Meaning => "how far a spring is pressed together";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsOfPair => false;

    public override bool IsWorstWhenLeast => true;

    public override bool BoundsBothSides => true;

    public override string? Refuses(Part first, Part? second) => null;

    public override Measurement Measure(MeasureRequest request) => new() { NotEvaluated = "only for tests of the loader" };

    public override double? At(MeasureRequest request, ReadOnlySpan<double> pose) => null;
}
