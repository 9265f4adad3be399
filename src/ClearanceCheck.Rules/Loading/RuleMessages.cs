using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Every message of this room, one method a fault.</summary>
internal static class RuleMessages
{
    public static Diagnostic NoFiles() => Diagnostic.Error(
        "rule.no-files", new SourceText("rules", "").Span(0, 0), "There is no rule file, so nothing would be checked.", "Name at least one rule file.");

    public static void OtherFormat(Field field) => field.Fault(
        "rule.other-format", "This program reads format 1 of rule files only.", "Write `format: 1` and check the keys against the guide.");

    public static void NoVersion(Field field, string typed) => field.Fault(
        "rule.no-version", $"`{Shown(typed)}` is not a version: a library's version is three numbers.", "Write for example `version: 1.0.0`.");

    public static void OtherLibrary(DiagnosticBag bag, LibraryHeader first, LibraryHeader other)
    {
        bool isOtherVersion = first.Name.Value == other.Name.Value;
        (Placed<string> related, Placed<string> differing) = isOtherVersion ? (first.Version, other.Version) : (first.Name, other.Name);
        bag.Add(Diagnostic.Error(
            "rule.other-library",
            differing.Span,
            $"This file belongs to {other.Name.Value} {other.Version.Value}, and the one before to {first.Name.Value} {first.Version.Value}; files of one library share name and version.",
            "Write the same `library` and `version` in all files, or load one library at a time.",
            new RelatedSpan(related.Span, $"{first.Name.Value} {first.Version.Value}")));
    }

    public static void DuplicateRule(DiagnosticBag bag, Placed<string> first, Placed<string> again) => bag.Add(Diagnostic.Error(
        "rule.duplicate-id",
        again.Span,
        $"The rule `{again.Value}` stands twice, in {first.Span.FileName} and in {again.Span.FileName}; neither was chosen.",
        "Keep the right one, or give the other an id of its own.",
        new RelatedSpan(first.Span, "first defined here")));

    public static void KeyNotYet(Field field, string key, string help) => field.Fault(
        "rule.key-not-yet", $"`{key}` is not in this version.", help);

    public static void ValueWithoutUnit(Field field, string typed, Quantity quantity) => field.Fault(
        "rule.value-without-unit",
        $"`{Shown(typed)}` has no unit, and a rule file has no unit for bare numbers.",
        quantity.Unit == QuantityUnit.Millimetre ? $"Write `{Shown(typed)} mm` or `{Shown(typed)} in`." : $"Write `{Shown(typed)} {QuantityUnitText.Of(quantity.Unit)}`.");

    public static void ValueOfOtherUnit(Field field, string typed, Quantity quantity) => field.Fault(
        "rule.value-of-other-unit",
        $"`{Shown(typed)}` has the wrong unit: {quantity.Name} is {UnitWords(quantity.Unit).Words}.",
        $"Write for example {UnitWords(quantity.Unit).Example}.");

    public static void SideNotJudged(Field field, string form, Quantity quantity)
    {
        string right = quantity.IsWorstWhenLeast ? "at-least" : "at-most", worst = quantity.IsWorstWhenLeast ? "smallest" : "largest";
        field.Fault(
            "rule.side-not-judged",
            $"`{form}` can't be judged: of {quantity.Name} {(form == "between" ? "only " : "")}the {worst} value over all poses is found.",
            $"Write `{right}: ...`.");
    }

    public static void OwnOfOtherUnit(Field field, PartProperty property, Quantity quantity) => field.Fault(
        "rule.own-of-other-unit",
        $"`{property.Id}` is in {property.Unit}, and {quantity.Name} in {QuantityWords.Unit(quantity)}: the one can't limit the other.",
        PartProperties.All.Where(p => p.Unit == QuantityWords.Unit(quantity)).Select(p => $"`{p.Id}`").ToArray() is { Length: > 0 } fitting
            ? $"Name a property in {QuantityWords.Unit(quantity)}: {string.Join(", ", fitting)}."
            : $"Write `at-most: ...`: no property is in {QuantityWords.Unit(quantity)}.");

    public static void CaseNeverTaken(Field later, Field earlier, int laterNumber, int earlierNumber) => later.Fault(
        "rule.case-never-taken",
        $"Case {laterNumber} is never taken: whenever its facts hold, those of case {earlierNumber} hold too, and the first is chosen.",
        "Put the case with more facts first.",
        new RelatedSpan(earlier.Node!.Span, $"case {earlierNumber}"));

    public static void EmptySelector(MappingReader reader) => reader.Fault(
        "rule.empty-selector", $"{Sentence(reader.Node.Label)} selects every part there is.", "Write `kind: [ ... ]`, `group: [ ... ]` or `id: [ ... ]`.");

    public static void SelectsNothing(MappingReader reader, PartSelector selector) => reader.Fault(
        "rule.selects-nothing", $"No part can be of {selector.InWords()} at once: every key must hold.", "Leave one of the keys out.");

    public static void ToWithoutPair(Field field, Quantity quantity) => field.Fault(
        "rule.to-without-pair", $"{Sentence(quantity.Name)} belongs to one part, and `to` names a second.", "Leave `to` out.");

    public static void NotPublished(Field field, string mark, bool isTyped) => field.Fault(
        "rule.not-published",
        mark == SourceReader.FromMemory ? "What is known from memory is never published." : $"`published` needs a source that was read{(isTyped ? "" : ", and `known` does not say so")}.",
        "Write `known: read` or `known: second-hand` if that is so; else `basis: common-practice`.");

    public static void SourceTooLong(Field field, int characters, int most) => field.Fault(
        "rule.source-too-long", $"The source has {NumberFormat.Fixed(characters, 0)} characters; at most {NumberFormat.Fixed(most, 0)} are kept.", "Name the source and what it says, no more.");

    public static void DangerOnAGuess(Field field) => field.Fault(
        "rule.danger-on-a-guess", "`danger` holds a vehicle, and common practice without a source is not enough for that.", "Write `severity: warning`, or name a source or a plain physical fact.");

    public static void NegativeUncertainty(Field field) => field.Fault(
        "rule.negative-uncertainty", "An uncertainty is zero or more.", "Take the minus away.");

    public static void ExampleLies(Field field, Rule rule, RuleExample example, ExampleOutcome found, Quantity quantity)
    {
        string give = example.Uncertainty > 0 ? $" give or take {QuantityWords.Value(RuleExamples.CoverageFactor * example.Uncertainty, quantity)}" : "";
        field.Fault(
            "rule.example-lies",
            $"This example says that {QuantityWords.Value(example.Value, quantity)}{give} is `{ExampleReader.Word(example.Expect)}`, but {Against(rule, example, found, quantity)}.",
            $"Correct the rule, or write `expect: {ExampleReader.Word(found)}`.");
    }

    private static (string Words, string Example) UnitWords(QuantityUnit unit) => unit switch
    {
        QuantityUnit.Percent => ("a share in percent", "`5 %`"),
        QuantityUnit.Degree => ("an angle", "`5 deg`"),
        _ => ("a length", "`25 mm` or `1 in`"),
    };

    private static string Against(Rule rule, RuleExample example, ExampleOutcome found, Quantity quantity)
    {
        RuleLimit limit = rule.LimitFor(example.Facts.ToHashSet(StringComparer.Ordinal)).Limit;
        return (found, RuleExamples.LimitOf(limit, example)) switch
        {
            (ExampleOutcome.NotCovered, LimitForPart.NotCovered small) => $"the rule asks nothing below a size of {NumberFormat.UpTo(small.First, 9)}, and this part's {small.Property} is {NumberFormat.UpTo(small.Value, 9)}",
            (ExampleOutcome.NotCovered, _) => "the rule does not cover such parts or facts",
            (_, LimitForPart.Missing missing) => $"the limit hangs on the part's `{missing.Property}`, which the example does not say: `{ExampleReader.Word(found)}`",
            (_, LimitForPart.Known known) => $"against {QuantityWords.Limit(known.Limit, quantity)} the rule makes it `{ExampleReader.Word(found)}`",
            _ => $"the rule makes it `{ExampleReader.Word(found)}`",
        };
    }

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Shown(string typed) => typed.Length <= 60 ? typed : typed[..57] + "...";
}
