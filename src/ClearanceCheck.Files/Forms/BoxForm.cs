using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A box: two opposite corners, its edges along the vehicle's axes.</summary>
internal static class BoxForm
{
    public static PartForm? Read(PartSource part)
    {
        Field field = part.Reader.Required("corners", "two opposite corners");
        if (field.List(f => f.Triple(), 2)?.Value is not [var first, var second]) return null;
        Vector3d size = second.Value.Millimetres() - first.Value.Millimetres();
        string[] flat = [.. new[] { ("x", size.X), ("y", size.Y), ("z", size.Z) }.Where(a => a.Item2 == 0).Select(a => a.Item1)];
        if (flat.Length > 0)
        {
            FileMessages.BoxWithoutThickness(field, flat, part.Kind.Forms.Contains(PartFormKind.Plate));
            return null;
        }

        if (!part.StandsAsItsAxle("the edges of a box lie along the vehicle's axes")) return null;
        part.Assume("Taken as a full box between its two corners, its edges along the vehicle's axes as it stood when it was measured.");
        ImmutableArray<MeasuredPoint> corners = part.Points("corners", [first, second], part.Surface("a corner of a housing"));
        return new PartForm.Box(corners[0], corners[1]);
    }
}
