using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Messages about limits, floors and what may be accepted, one method a fault.</summary>
internal static class LimitMessages
{
    public static void TwoForms(Field second, string secondForm, Field first, string firstForm, bool canHaveBoth) => second.Fault(
        "rule.two-limits",
        $"A limit has one form, and here it has two: `{firstForm}` and `{secondForm}`.",
        canHaveBoth && secondForm is "at-most" && firstForm is "at-least" ? "Keep one of them; for both sides write `between: [ least, most ]`." : "Keep one of them.",
        new RelatedSpan(first.Node!.Span, "the other form"));

    public static void NoForm(MappingReader reader, IEnumerable<string> forms) => reader.Fault(
        "rule.no-limit", "The limit says nothing.", $"Write one of {string.Join(", ", forms.Select(f => $"`{f}`"))}, such as `limit: {{ at-least: 25 mm }}`.");

    public static void NothingBetween(Field field, string least, string most) => field.Fault(
        "rule.nothing-between", $"Nothing lies between {least} and {most}.", "Write the smaller value first.");

    public static void StepsNotOrdered(Field item, int number) => item.Fault(
        "rule.steps-not-ordered", $"Step {number} begins at a size that is not above the one before.", "Write the steps by growing size, each size once.");

    public static void SizeWithoutUnit(Field field, string typed, PartProperty property) => field.Fault(
        "rule.size-without-unit", $"`{typed}` has no unit, and a rule file has no unit for bare numbers.", $"Write `{typed} {property.Unit}`.");

    public static void FloorWithoutSimple(Field field) => field.Fault(
        "rule.floor-without-simple", "A `floor` belongs to `decision: simple`, and this rule judges its limit with the give or take.", "Write `decision: simple` above it, or leave `floor` out.");

    public static void SimpleDanger(Field field) => field.Fault(
        "rule.simple-danger", "A `danger` is always judged with its give or take.", "Leave `decision` and `floor` out, or write `severity: warning`.");

    public static void SimpleFact(Field field, string basis) => field.Fault(
        "rule.simple-fact", $"`decision: simple` is for a limit that holds a margin already, and one on `{basis}` holds none.", "Leave `decision` and `floor` out.");

    public static void SimpleTwoSides(Field field) => field.Fault(
        "rule.simple-two-sides", "`decision: simple` needs a limit with one side: its floor lies on one side.", "Leave `decision` and `floor` out, or write two rules.");

    public static void FloorNotLooser(Field field, string limit) => field.Fault(
        "rule.floor-not-looser", $"A floor lies on the looser side of every limit, and this one does not: the rule asks for {limit}.", "Write a value that is worse than every limit of the rule.");

    public static void AcceptFloorStricter(Field field, string limit) => field.Fault(
        "rule.accept-floor-stricter", $"What may be accepted is worse than the limit or at it, and this floor is better: the rule asks for {limit}.", "Write a value that is no better than any limit of the rule.");

    public static void AcceptTwoSides(Field field) => field.Fault(
        "rule.accept-two-sides", "What may be accepted has one floor, and this limit has two sides.", "Leave `accept` out, or write two rules.");

    public static void TooManyDays(Field field, int most) => field.Fault(
        "rule.too-many-days", FormattableString.Invariant($"A finding is accepted for {most} days at most."), FormattableString.Invariant($"Write a number of days from 1 to {most}."));
}
