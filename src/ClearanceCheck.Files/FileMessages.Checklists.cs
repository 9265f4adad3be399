using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files;

/// <summary>Messages about answers, tightening, what is absent and what is in scope.</summary>
internal static partial class FileMessages
{
    public static void NoSuchItem(DiagnosticBag bag, Placed<string> id, IEnumerable<string> items) => bag.Add(Diagnostic.Error(
        "file.no-such-item",
        id.Span,
        $"The rules ask no item `{id.Value}`, so this answer would count for nothing.",
        NearestWord.Find(id.Value, items) is { } nearest ? $"Did you mean `{nearest}`?" : "The ids of all items stand in the report's checklist."));

    public static void AnswerWithoutValue(MappingReader reader, AskedItem item) => reader.Fault(
        "file.answer-without-value", $"`{item.Id}` asks for a value: a yes alone is too cheap here.", $"Write what was read, such as `value: ... {item.Units[0]}`, or `is: not-done`.");

    public static void AnswerWithoutMark(MappingReader reader, AskedItem item) => reader.Fault(
        "file.answer-without-mark", $"`{item.Id}` asks for a mark on the thing itself: a yes alone is too cheap here.", "Mark it and write how, such as `mark: painted`, or `is: not-done`.");

    public static void ValueNotAsked(Field field, string item) => field.Fault(
        "file.value-not-asked", $"`{item}` asks for no value.", "Write it into `note`.");

    public static void ValueOfAnswer(Field field, string typed, IEnumerable<string> units) => field.Fault(
        "file.value-of-answer", $"`{VisibleText.Of(typed)}` is not a number with one of the units that are asked for: {string.Join(", ", units)}.", $"Write the number with its unit: `value: ... {units.First()}`.");

    public static void NoSuchPivot(DiagnosticBag bag, Placed<string> key, IReadOnlyCollection<string> known) => bag.Add(Diagnostic.Error(
        "file.no-such-pivot",
        key.Span,
        $"`{key.Value}` is neither an axle of the file nor one of its bushed pivots.",
        NearestWord.Find(key.Value, known) is { } nearest ? $"Did you mean `{nearest}`?" : "Write the name of an axle, or axle and point: `rear-track-bar-frame`."));

    public static void NothingExpected(DiagnosticBag bag, Placed<string> id, IReadOnlyCollection<string> known) => bag.Add(Diagnostic.Error(
        "file.nothing-expected",
        id.Span,
        $"The rules expect no `{id.Value}`, so declaring it absent would count for nothing.",
        NearestWord.Find(id.Value, known) is { } nearest ? $"Did you mean `{nearest}`?" : "The ids of what is expected stand in the report's checklist."));

    public static void AnsweredAndAbsent(DiagnosticBag bag, SourceSpan absent, string id) => bag.Add(Diagnostic.Error(
        "file.answered-and-absent", absent, $"`{id}` is declared absent here and has an answer as well.", "Keep one of the two."));

    public static void FittedAndNone(Field field) => field.Fault(
        "file.fitted-and-none", "`none` stands beside other words.", "Write `fitted: [ none ]`, or leave `none` out.");

    public static void WholeAndAxles(Field field) => field.Fault(
        "file.whole-and-axles", "`whole-vehicle` takes in every axle, and other words stand beside it.", "Write `scope: [ whole-vehicle ]`, or the names of the axles alone.");
}
