using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A plate: the points around it and a thickness.</summary>
internal static class PlateForm
{
    public static PartForm? Read(PartSource part)
    {
        Field field = part.Reader.Required("outline", "the points around it, in order");
        IReadOnlyList<Placed<LengthTriple>>? typed = field.Triples()?.Value;
        Placed<LengthReading>? thickness = part.Reader.Required("thickness", "how thick it is").Length(Sizes.Thickness);
        if (typed is null || !IsOutline(field, typed, part.Draft) || thickness is null) return null;
        Within surface = part.Surface("a surface of a plate");
        ImmutableArray<MeasuredPoint> outline = part.Points("outline", typed, surface);
        if (PlateOutline.FaultOf([.. outline.Select(part.Draft.At)], thickness.Value.Length.Millimetres, new Parameter("", 0, surface.HalfWidthMm, false).StandardUncertaintyMm) is { } fault)
        {
            FileMessages.BadOutline(field, fault);
            return null;
        }

        part.Assume("The points of its outline are taken to lie in the middle of its thickness, and the plate is taken as flat between them.");
        return new PartForm.Plate(outline, part.Size("thickness", thickness));
    }

    private static bool IsOutline(Field field, IReadOnlyList<Placed<LengthTriple>> typed, VehicleDraft draft)
    {
        if (typed.Count < 3)
        {
            FileMessages.TwoPointPlate(field);
            return false;
        }

        if (typed.Count > PlateOutline.MostPoints)
        {
            FileMessages.TooManyCorners(field, typed.Count);
            return false;
        }

        bool good = true;
        for (int i = 0; i < typed.Count; i++)
        {
            Vector3d before = typed[i == 0 ? ^1 : i - 1].Value.Millimetres();
            if (typed[i].Value.Millimetres() != before) continue;
            if (i == 0) FileMessages.ClosedOutline(draft.Diagnostics, typed[^1].Span);
            else FileMessages.CornerTwice(draft.Diagnostics, typed[i].Span, i + 1);
            good = false;
        }

        return good;
    }
}
