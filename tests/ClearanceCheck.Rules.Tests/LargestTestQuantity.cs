using ClearanceCheck.Quantities;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Tests;

/// <summary>A quantity of the tests' own whose largest value is the bad one: a rule can use it as soon as the catalogue holds it.</summary>
internal sealed class LargestTestQuantity : Quantity
{
    public override string Id => "free-span";

    public override string Name => "free span";

    public override string Meaning => "the longest stretch between two clips";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsOfPair => false;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) => null;

    public override Measurement Measure(MeasureRequest request) => new() { NotEvaluated = "only for tests of the loader" };

    public override double? At(MeasureRequest request, ReadOnlySpan<double> pose) => null;
}
