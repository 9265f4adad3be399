using ClearanceCheck.Geometry;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Spans;

/// <summary>The longest length of a line that nothing holds, along the line, mm.</summary>
/// <remarks>Between two clips, or from an end to the nearest clip: a fitting at an end holds it as a clip does.</remarks>
public sealed class SpanQuantity : PosedQuantity
{
    public override string Id => "span";

    public override string Name => "unsupported length";

    public override string Meaning => "the longest length of the line, along it, from one clip or end to the next; it does not change with the pose";

    public override QuantityUnit Unit => QuantityUnit.Millimetre;

    public override bool IsWorstWhenLeast => false;

    public override string? Refuses(Part first, Part? second) =>
        first.Form is PartForm.Chain && first.Kind.IsIn("line") ? null : $"{first.Name} is not a line";

    private protected override PosedQuestions Ask(MeasureRequest request)
    {
        var chain = (PartForm.Chain)request.First.Form;
        return chain.JoinedEnds.IsEmpty
            ? PosedQuestions.Lack($"where {request.First.Name} is held is not in the file: type the numbers of its clipped points under `clips`")
            : PosedQuestions.Of(new PosedQuestion(null, [request.First], at => Longest(chain, at.Parameters.Span), null));
    }

    private static double Longest(PartForm.Chain chain, ReadOnlySpan<double> parameters)
    {
        double longest = 0, length = 0;
        Vector3d last = chain.Path[0].At(parameters);
        for (int i = 1; i < chain.Path.Length; i++)
        {
            Vector3d next = chain.Path[i].At(parameters);
            length += (next - last).Length;
            longest = Math.Max(longest, length);
            if (chain.JoinedEnds.Contains(i)) length = 0;
            last = next;
        }

        return longest;
    }
}
