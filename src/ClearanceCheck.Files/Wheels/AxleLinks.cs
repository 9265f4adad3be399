using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Wheels;

/// <summary>Reads <c>links</c> of an axle: outside diameters of the layout's own rods, which then are parts too.</summary>
internal static class AxleLinks
{
    private const string FrameEnd = "-frame", AxleEnd = "-axle";

    public static void Read(MappingReader reader, AxleLayout layout, string axle, AxleGeometry? geometry, VehicleDraft draft)
    {
        Field field = reader.Optional("links");
        if (!field.IsPresent) return;
        ImmutableArray<string> rods = layout is FreeLayout
            ? [.. geometry?.FreeJoints.Where(j => j.Kind is FreeJointKind.Rod or FreeJointKind.Spring).Select(j => j.Name) ?? []]
            : RodsOf(layout);
        if (rods.IsEmpty && geometry is not null) FileMessages.NoRods(field, axle);
        else field.Mapping(r => ReadRods(r, rods, axle, geometry, draft));
    }

    private static Boxed<int>? ReadRods(MappingReader reader, ImmutableArray<string> rods, string axle, AxleGeometry? geometry, VehicleDraft draft)
    {
        // Where a joint of a free layout is faulty nobody knows which rods there are.
        if (rods.IsEmpty) reader.AllowAll();
        foreach (string rod in rods)
        {
            Field field = reader.Optional(rod);
            if (!field.IsPresent) continue;
            string id = $"{axle}-{rod}";
            draft.FromAxles[id] = axle;
            draft.Remember($"parts/{id}", field.Node!.Heading);
            if (field.Length(Sizes.Diameter) is not { } diameter || geometry is null) continue;
            (Place First, Place Second) ends = EndsOf(rod, axle, geometry);
            if ((draft.At(ends.Second.At) - draft.At(ends.First.At)).Length < Ends.LeastApartMm) FileMessages.RodWithoutLength(field, rod);
            draft.Parts.Add(Part(id, axle, rod, ends, draft.Length($"parts/{id}/outside-diameter", diameter, Sizes.Default, widen: false)));
            draft.Assume($"parts/{id}", LinkForm.Straight);
        }

        return new(rods.Length);
    }

    private static Part Part(string id, string axle, string rod, (Place First, Place Second) ends, MeasuredLength diameter) => new()
    {
        Id = id,
        Name = AxleWords.Name(axle, rod),
        Kind = PartKinds.Find("link")!,
        Body = ends.First.Body,
        Form = new PartForm.Link(ends.First, ends.Second, diameter),
        Touches = [],
    };

    private static (Place First, Place Second) EndsOf(string rod, string axle, AxleGeometry geometry)
    {
        if (geometry.FreeJoints.FirstOrDefault(j => j.Name == rod) is { } joint)
            return (new Place(joint.FirstBody, joint.At[0]), new Place(joint.SecondBody, joint.At[1]));
        return (new Place(Vehicle.Chassis, geometry.Points[rod + FrameEnd]), new Place($"{axle}/axle", geometry.Points[rod + AxleEnd]));
    }

    private static ImmutableArray<string> RodsOf(AxleLayout layout)
    {
        HashSet<string> names = [.. layout.Points.Select(p => p.Name)];
        return
        [
            .. layout.Points.Select(p => p.Name).Where(n => n.EndsWith(FrameEnd, StringComparison.Ordinal)).Select(n => n[..^FrameEnd.Length])
                .Where(n => names.Contains(n + AxleEnd)),
        ];
    }
}
