using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The letters A and B on the two parts.</summary>
internal static class LetterDrawing
{
    private const int StepsPerStretch = 24;

    public static void Draw(SvgWriter svg, PageMap map, Evidence evidence, PagePoint label)
    {
        for (int i = 0; i < Math.Min(2, evidence.Drawing.Parts.Length); i++)
        {
            PagePoint at = Place(map, evidence, i, label);
            svg.Disc(at, 14, "letter-disc").Text(at + new PagePoint(0, 6), ((char)('A' + i)).ToString(), "letter", "middle");
        }
    }

    /// <summary>On the part, away from the label, the gap and the other part; inside the frame.</summary>
    private static PagePoint Place(PageMap map, Evidence evidence, int index, PagePoint label)
    {
        DrawnPart part = evidence.Drawing.Parts[index];
        PagePoint witness = map[index == 0 ? evidence.WitnessFirst : evidence.WitnessSecond];
        PagePoint otherWitness = map[index == 0 ? evidence.WitnessSecond : evidence.WitnessFirst];
        PagePoint best = witness + ((witness - otherWitness).UnitOr(new PagePoint(0, 1)) * 34);
        double bestRoom = double.NegativeInfinity;
        foreach (PagePoint place in Along(part).Select(p => map[p]).Where(p => map.Shows(p, 18)))
        {
            double room = Math.Min(Math.Min((place - label).Length - 56, (place - witness).Length - 30), 40);
            for (int other = 0; other < evidence.Drawing.Parts.Length; other++)
                if (other != index) room += Math.Clamp(DimensionDrawing.RoomBeside(map, evidence.Drawing.Parts[other], place), -20, 20) / 2;
            // The two letters of parts side by side stand at different heights along them.
            room -= index == 0 ? place.X / 40 : (map.Width - place.X) / 40;
            if (room > bestRoom + 1e-6) (best, bestRoom) = (place, room);
        }

        return best;
    }

    private static IEnumerable<Vector3d> Along(DrawnPart part)
    {
        for (int i = 1; i < part.Points.Length; i++)
            for (int step = 0; step <= StepsPerStretch; step++)
                yield return Vector3d.Lerp(part.Points[i - 1], part.Points[i], (double)step / StepsPerStretch);
    }
}
