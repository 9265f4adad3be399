using System.Collections.Immutable;

namespace ClearanceCheck.Quantities.Posed;

/// <summary>All that a quantity asks of its parts, or why it can't ask.</summary>
/// <param name="Questions">The worst answer is the quantity's value.</param>
/// <param name="Missing">A sentence that says what is missing, and which reading brings it; null where nothing is.</param>
internal sealed record PosedQuestions(ImmutableArray<PosedQuestion> Questions, string? Missing)
{
    public static PosedQuestions Lack(string what) => new([], what);

    public static PosedQuestions Of(params ImmutableArray<PosedQuestion> questions) => new(questions, null);
}
