using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Every message of this room, one method a fault; those about shapes, ends and wheels stand in the other parts.</summary>
internal static partial class FileMessages
{
    public static void OtherFormat(Field field) => field.Fault(
        "file.other-format", "This program reads format 1 only.", "Write `format: 1` and check the keys against the guide.");

    public static void NoAxle(Field field) => field.Fault(
        "file.no-axle", "No axle is described, so nothing moves.", "Write `rear:` below `axles:` with its layout, points and travel.");

    /// <summary>One message: who swaps left and right turns many signs and makes one mistake.</summary>
    public static void WrongSide(IReadOnlyList<(Field At, string Name)> points)
    {
        (Field first, string name) = points[0];
        bool left = name.Contains("left", StringComparison.Ordinal);
        if (points.Count == 1)
        {
            first.Fault("file.wrong-side", $"The point {name} lies on the {(left ? "right" : "left")} of the centre plane: y is positive to the left.", "Change the sign of y, or swap left and right.");
            return;
        }

        first.Fault(
            "file.wrong-side",
            $"These {points.Count} points lie on the other side of the centre plane than their names say, y is positive to the left: {string.Join(", ", points.Select(p => p.Name))}.",
            "If all are meant so, left and right were swapped, or y was counted to the right: swap the names, or change the signs.");
    }

    public static void JoinedToItself(Field field, string body) => field.Fault(
        "file.joined-to-itself", $"The joint joins {body} to itself.", "Name two different bodies.");

    public static void PointsOfJoint(Field field, FreeJointKind kind, int needed, int typed) => field.Fault(
        "file.points-of-joint",
        $"A {Word(kind)} needs {needed} point{(needed == 1 ? "" : "s")}, not {typed}.",
        needed == 2 ? "Write `at: [ [x, y, z], [x, y, z] ]`, the first on the first body." : "Write `at: [ [x, y, z] ]`.");

    public static void TouchesNothing(DiagnosticBag bag, string part, Placed<string> other, IEnumerable<string> parts)
    {
        string? nearest = NearestWord.Find(other.Value, parts.Where(p => p != part));
        bag.Add(Diagnostic.Error(
            "file.touches-nothing",
            other.Span,
            other.Value == part ? "A part can't be meant to touch itself." : $"There is no part `{other.Value}` to touch.",
            nearest is null ? "Write the id of another part of the file." : $"Did you mean `{nearest}`?"));
    }

    public static void ClipBeyondPath(Field field, int clip, int points) => field.Fault(
        "file.clip-beyond-path", $"There is no point {clip}: the path has {points} points.", "Count the points of the path from 1.");

    public static void NotAFinding(DiagnosticBag bag, Placed<string> id) => bag.Add(Diagnostic.Error(
        "file.not-a-finding", id.Span, $"`{VisibleText.Of(id.Value)}` is not the id of a finding.", "Write it as the report does, below More on this finding: `rule--part--part`."));

    public static void OnePointPath(Field field) => field.Fault(
        "file.one-point-path", "A line or pipe needs at least two points.", "Measure both ends and every bend between them.");

    public static void TooFewRows(Field field, string file, string id, int rows) => field.Fault(
        "file.too-few-rows", $"The table {file} has {rows} row{(rows == 1 ? "" : "s")} for `{id}`; a line or pipe needs at least two.", $"Put `{id}` in the column `part` of each of its points.");

    public static void NoSuchFile(Field field, string path, string what) => field.Fault(
        "file.not-found", $"There is no file {VisibleText.Of(path)} beside the inspection file.", $"Check the spelling, or put the {what} into the same folder.");

    public static void RepeatedPoint(DiagnosticBag bag, SourceSpan span, int number) => bag.Add(Diagnostic.Note(
        "file.repeated-point", span, $"Point {number} repeats the one before it; the two count as one.", "Leave one out, or measure it again if it was meant to be another."));
}
