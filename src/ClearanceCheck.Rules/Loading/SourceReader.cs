using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads where a limit comes from. What is known from memory is never called published.</summary>
internal static class SourceReader
{
    public const string Published = "published", CommonPractice = "common-practice", PlainFact = "plain-fact", Shop = "shop";

    public const string WasRead = "read", SecondHand = "second-hand", FromMemory = "from-memory", None = "none";

    // A source is a citation with what it says; the general limit of a text would cut it.
    private const int MostCharacters = 600;

    public static ImmutableArray<string> Bases { get; } = [Published, CommonPractice, PlainFact, Shop];

    public static ImmutableArray<string> Marks { get; } = [WasRead, SecondHand, FromMemory, None];

    public static RuleSource? Read(Field field) => field.Mapping(Read);

    private static RuleSource? Read(MappingReader reader)
    {
        Field basisField = reader.Required("basis", "what the limit rests on: " + string.Join(", ", Bases)), knownField = reader.Optional("known");
        Placed<string>? basis = basisField.Word(Bases), known = knownField.Word(Marks);
        string? text = ReadLong(reader.Optional("text"));
        if (basis is null || (knownField.IsPresent && known is null)) return null;
        string mark = known?.Value ?? None;
        if (basis.Value == Published && mark is not (WasRead or SecondHand))
        {
            RuleMessages.NotPublished(knownField.IsPresent ? knownField : basisField, mark, knownField.IsPresent);
            return null;
        }

        return new RuleSource(basis.Value, mark, text ?? "");
    }

    /// <summary>A text that may be longer than others: a citation, a sentence with its reason.</summary>
    public static string? ReadLong(Field field)
    {
        if (field.Node is not ScalarNode scalar || scalar.Text.Length <= DocumentLimits.MostShownText) return field.Text()?.Value;
        string visible = VisibleText.Of(scalar.Text.Trim().ReplaceLineEndings(" "));
        if (visible.Length <= MostCharacters) return visible;
        RuleMessages.SourceTooLong(field, visible.Length, MostCharacters);
        return null;
    }
}
