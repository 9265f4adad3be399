using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Files.Wheels;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads <c>leaves</c> of an axle on leaf springs: the sizes of its packs, which then are parts, one a side.</summary>
internal static class LeavesReader
{
    private const double LeastMm = 3;
    private static readonly ImmutableArray<string> Sides = ["left", "right"];

    private static LengthRange WidthRange { get; } = Sizes.Range(20, 200, "the width of a leaf");

    private static LengthRange ThicknessRange { get; } = Sizes.Range(LeastMm, 60, "the thickness of one leaf");

    private static LengthRange StackRange { get; } = Sizes.Range(LeastMm, 250, "the thickness of all leaves together");

    /// <summary>Reads the sizes; false where they have a fault, which is said.</summary>
    public static bool Read(Field field, AxleLayout layout, string axle, AxleGeometry? geometry, ImmutableSortedDictionary<string, MeasuredLength>? figures, VehicleDraft draft)
    {
        if (!field.IsPresent) return true;
        if (layout is not LeafSpringLayout)
        {
            FileMessages.NoLeafSprings(field, layout);
            return false;
        }

        if (field.Node is MappingNode node)
            foreach (string side in Sides)
            {
                draft.FromAxles[Id(axle, side)] = axle;
                draft.Remember($"parts/{Id(axle, side)}", node.Heading);
            }

        if (field.Mapping(ReadSizes) is not { } sizes) return false;
        if (geometry is not null && figures is not null) Make(sizes.Value, axle, geometry, figures[LeafSpringLayout.ClampLength], draft);
        return true;
    }

    private static Boxed<(Placed<LengthReading> Width, Placed<LengthReading> Thickness, Placed<LengthReading> Stack)>? ReadSizes(MappingReader reader)
    {
        Placed<LengthReading>? width = reader.Required("width", "how wide the leaves are").Length(WidthRange);
        Placed<LengthReading>? thickness = reader.Required("thickness", "how thick the main leaf is, the one with the eyes").Length(ThicknessRange);
        Field stackField = reader.Required("stack", "how thick all leaves are together, beside the U-bolts");
        Placed<LengthReading>? stack = stackField.Length(StackRange);
        if (width is null || thickness is null || stack is null) return null;
        if (stack.Value.Length >= thickness.Value.Length) return new((width, thickness, stack));
        FileMessages.StackThinnerThanLeaf(stackField, thickness);
        return null;
    }

    private static void Make(
        (Placed<LengthReading> Width, Placed<LengthReading> Thickness, Placed<LengthReading> Stack) sizes, string axle, AxleGeometry geometry, MeasuredLength clamp, VehicleDraft draft)
    {
        string path = $"axles/{axle}/leaves";
        MeasuredLength width = draft.Length($"{path}/width", sizes.Width, Sizes.Default, widen: false);
        MeasuredLength thickness = draft.Length($"{path}/thickness", sizes.Thickness, Sizes.Default, widen: false);
        MeasuredLength stack = draft.Length($"{path}/stack", sizes.Stack, Sizes.Default, widen: false);
        MeasuredLength shape = draft.Computed($"{path}/shape", 0, Defaults.LeafShapeMm, true);
        draft.Assume(
            path,
            $"Both springs are taken as alike: the main leaf on top, the others below it, the pack as thick up to both eyes as beside the U-bolts; eyes, clips and shackles are not covered. Each half bends in one curvature and twists evenly up to its eye's bolt, {NumberFormat.UpTo(Defaults.LeafShapeMm, 1)} mm each way (common practice, no source).");
        foreach (string side in Sides)
        {
            var form = new PartForm.LeafSpring(
                Place(Vehicle.Chassis, $"spring-eye-{side}-frame"), Place($"{axle}/axle", $"spring-centre-pin-{side}"), Place($"{axle}/shackle-{side}", $"shackle-{side}-spring"),
                clamp, width, thickness, stack, shape);
            draft.Parts.Add(new Part
            {
                Id = Id(axle, side),
                Name = AxleWords.Name(axle, $"{side}-leaf-spring"),
                Kind = PartKinds.Find("leaf-spring")!,
                Body = form.Seat.Body,
                Form = form,
                Touches = [],
            });
        }

        Place Place(string body, string point) => new(body, geometry.Points[point]);
    }

    private static string Id(string axle, string side) => $"{axle}-{side}-leaf-spring";
}
