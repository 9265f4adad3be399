using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>Messages about accepted findings.</summary>
internal static partial class FileMessages
{
    public static void AcceptsNoPart(DiagnosticBag bag, Placed<string> part, IEnumerable<string> parts)
    {
        string? nearest = NearestWord.Find(part.Value, parts);
        bag.Add(Diagnostic.Error(
            "file.accepts-no-part",
            part.Span,
            $"There is no part `{part.Value}` whose finding could be accepted.",
            nearest is null ? "Write the ids of the finding's parts as the report does." : $"Did you mean `{nearest}`?"));
    }

    public static void AcceptedTwice(DiagnosticBag bag, Placed<string> id, string first) => bag.Add(Diagnostic.Error(
        "file.accepted-twice", id.Span, $"The finding is accepted twice, by `{first}` too.", "Keep one of the two."));
}
