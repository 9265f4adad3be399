using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files;

/// <summary>Messages about the shapes of parts.</summary>
internal static partial class FileMessages
{
    public static OutlineFault OutlineWithoutArea { get; } = new(
        "file.outline-without-area", "The outline encloses no area: its points lie on one line.", "Measure the corners all the way around the plate.");

    public static OutlineFault OutlineCrosses { get; } = new(
        "file.outline-crosses", "The outline crosses itself.", "List the points in order around the plate, one way around.");

    public static void NoForm(PartSource part, string offer) => part.Reader.Fault(
        "file.no-form", $"Nothing says what shape `{part.Id}` ({part.Kind.Meaning}) has.", $"Type one of: {offer}.");

    public static void TwoForms(PartSource part, IReadOnlyList<string> keys, string offer) => part.Reader.Fault(
        "file.two-forms",
        $"`{part.Id}` has {(keys.Count == 2 ? "two" : "several")} shapes: {string.Join(" and ", keys.Select(k => $"`{k}`"))}.",
        $"Keep one; a second shape is a part of its own. For {part.Kind.Meaning}: {offer}.");

    public static void OtherForm(PartSource part, string key, string offer) => part.Reader.Fault(
        "file.other-form", $"`{key}` can't describe `{part.Id}` ({part.Kind.Meaning}).", $"Type {offer}.");

    public static void FromAxle(Field kind, string word) => kind.Fault(
        "file.from-axle",
        $"A {word} is not typed among the parts: it comes from its axle.",
        word == "leaf-spring"
            ? "Write `leaves: { width: 63 mm, thickness: 8 mm, stack: 42 mm }` below the axle, with the sizes of its packs; its layout is `leaf-springs`."
            : "Write `wheel:` below the axle, with `tire` and `offset`; for the wheel's inner faces `barrel` too.");

    public static void MadeByAxle(DiagnosticBag bag, SourceSpan span, string id, string axle) => bag.Add(Diagnostic.Error(
        "file.made-by-axle", span, $"The axle {axle} makes a part `{id}` of its own, so this part can't have that id.", "Give it another id, or leave it out if it is the same thing."));

    public static void TwoPointPlate(Field field) => field.Fault(
        "file.two-point-plate", "A plate needs at least three points around its edge.", "Measure every corner, in order around the plate.");

    public static void TooManyCorners(Field field, int typed) => field.Fault(
        "file.too-many-corners", $"The outline has {typed} points; {PlateOutline.MostPoints} are read at most.", "Leave out points on straight edges, or describe the plate as several.");

    public static void CornerTwice(DiagnosticBag bag, SourceSpan span, int number) => bag.Add(Diagnostic.Error(
        "file.corner-twice", span, $"Corner {number} repeats the one before it.", "Leave one out, or measure it again if it was meant to be another."));

    public static void ClosedOutline(DiagnosticBag bag, SourceSpan span) => bag.Add(Diagnostic.Error(
        "file.closed-outline", span, "The last point repeats the first one; an outline closes by itself.", "Leave the last point out."));

    public static OutlineFault OutlineNotFlat(int number, string off) => new(
        "file.outline-not-flat",
        $"Point {number} lies {off} mm off the plane through the outline; {NumberFormat.UpTo(PlateOutline.FlatWithinMm, 0)} mm at most are taken as flat.",
        "Measure the points again; describe a bent plate as several flat parts.");

    public static OutlineFault OutlineAlmostCrosses(int number, double byMm) => new(
        "file.outline-almost-crosses",
        $"The outline is so narrow that it would cross itself if point {number} lay {Millimetres(byMm)} elsewhere, which its give or take allows.",
        "Leave out the corner that makes it so narrow, or measure there again and type how well that was done as `within`.");

    public static void BadOutline(Field field, OutlineFault fault) => field.Fault(fault.Id, fault.Message, fault.Help);

    public static void BoxWithoutThickness(Field field, IReadOnlyList<string> axes, bool canBePlate) => field.Fault(
        "file.box-without-thickness",
        $"A box without thickness: both corners have the same {string.Join(" and the same ", axes)}.",
        canBePlate ? "Measure two opposite corners; for a plate use `outline` and `thickness`." : "Measure two opposite corners that differ in x, y and z.");

    public static void ShortAxis(Field field, double apartMm, double leastMm) => field.Fault(
        "file.short-axis",
        $"The two points of the axis are {NumberFormat.UpTo(apartMm, 1)} mm apart: too near to each other to say where it points.",
        $"Take two points on it at least {NumberFormat.UpTo(leastMm, 0)} mm apart, the farther the better; the second may lie outside the part.");

    public static void OneCornerProfile(Field field) => field.Fault(
        "file.one-corner-profile", "A profile needs at least two corners.", "Write `[ [radius, along], [radius, along] ]`, corner by corner along the axis.");

    public static void ProfileOnAxis(Field field) => field.Fault(
        "file.profile-on-axis", "Every corner of the profile lies on the axis, so there is nothing to turn.", "The first number of a corner is its distance from the axis, the second its place along it.");

    public static void WallFillsAll(Field field) => field.Fault(
        "file.wall-fills-all", "The wall is as thick as the part's largest radius, so nothing is hollow.", "Leave `wall` out for a full part, or measure the wall again.");
}
