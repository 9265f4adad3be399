using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;

namespace ClearanceCheck.Rules.Checklists;

/// <summary>Messages about items and expectations, one method a fault.</summary>
internal static class ChecklistMessages
{
    public static void TwoLists(DiagnosticBag bag, MappingEntry first, MappingEntry second) => bag.Add(Diagnostic.Error(
        "rule.two-lists",
        second.Key.Span,
        $"`{second.Key.Text}` stands beside `{first.Key.Text}`: a file of the library holds rules, items or coverage, one of them.",
        "Put it into a file of its own, with the same `library` and `version`.",
        new RelatedSpan(first.Key.Span, first.Key.Text)));

    public static void ValueWithoutUnits(Field expects) => expects.Fault(
        "rule.value-without-units", "The item asks for a value and does not say in which units.", "Write for example `units: [ Nm, lb-ft ]`.");

    public static void UnitsWithoutValue(Field units) => units.Fault(
        "rule.units-without-value", "The item gives units and asks for no value.", "Write `expects: [ value ]`, or leave `units` out.");

    public static void EmptyCondition(MappingReader reader) => reader.Fault(
        "rule.empty-condition", "The item applies to nothing in particular.", "Write `kind`, `axle` or `fitted`, or leave `applies-to` out: then it is asked of every vehicle.");

    public static void WhereOfVehicle(Field where) => where.Fault(
        "rule.where-of-vehicle", "`where` asks for facts of an axle, and this is expected of the vehicle as a whole.", "Leave `where` out, or write `each: axle`.");
}
