using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The direction from which two parts are drawn: square to the line between their nearest points, so that the gap shows its full length.</summary>
/// <param name="Toward">Unit vector from the parts to the eye.</param>
/// <param name="Right">Unit vector that is to the right on the page.</param>
/// <param name="Up">Unit vector that is up on the page.</param>
/// <param name="Across">Unit vector from the first part to the second at the narrowest place, in the page.</param>
internal sealed record ViewPlane(Vector3d Toward, Vector3d Right, Vector3d Up, Vector3d Across)
{
    /// <summary>How much a view along a vehicle axis is preferred over one that shows the parts a little longer: a reader knows where it is taken from.</summary>
    private const double AlongAxisBonus = 0.25;

    /// <summary>Two directions nearer than this in worth count as equal, so that the last bits of a number do not turn a drawing.</summary>
    private const double Worth = 1e-6;

    private const double SquareEnough = 0.95;
    private const int GapSteps = 3;

    /// <summary>Surfaces nearer to the gap than this do not hide it, mm.</summary>
    private const double HiddenSlackMm = 0.05;

    public static ViewPlane Choose(Evidence evidence)
    {
        ImmutableArray<Vector3d> tangents = Tangents(evidence);
        Vector3d across = AcrossOf(evidence, tangents);
        bool hasPieces = evidence.Drawing.Parts.Any(p => !p.Pieces.IsEmpty);
        Vector3d best = across.AnyPerpendicular();
        double bestWorth = double.NegativeInfinity;
        foreach (Vector3d candidate in Candidates(across, tangents, hasPieces))
        {
            double worth = WorthOf(candidate, tangents, hasPieces) - (hasPieces ? Hidden(candidate, across, evidence) : 0);
            if (worth > bestWorth + Worth) (best, bestWorth) = (candidate, worth);
        }

        return Oriented(best, across);
    }

    /// <summary>A point of the vehicle frame on the plane, in mm: x to the right, y up.</summary>
    public (double Right, double Up) Project(Vector3d point) => (Vector3d.Dot(point, Right), Vector3d.Dot(point, Up));

    /// <summary>Where the eye is, in words.</summary>
    public string Words
    {
        get
        {
            (double Share, string Place)[] shares =
            [
                (-Toward.X, "behind"), (Toward.X, "the front"), (Toward.Y, "the left"), (-Toward.Y, "the right"), (-Toward.Z, "below"), (Toward.Z, "above"),
            ];
            (double share, string place) = shares.MaxBy(s => s.Share);
            return share > 0.95 ? $"Seen from {place}" : $"Seen about from {place}, turned so that the gap shows its full length";
        }
    }

    private static Vector3d AcrossOf(Evidence evidence, ImmutableArray<Vector3d> tangents)
    {
        Vector3d between = evidence.WitnessSecond - evidence.WitnessFirst;
        if (between.Length > 1e-6) return between / between.Length;
        if (evidence.Drawing.Parts.Any(p => !p.Pieces.IsEmpty) && TouchNormal.Of(evidence.Drawing, evidence.WitnessFirst) is { LengthSquared: > 0 } normal) return normal;
        Vector3d square = tangents.Length > 1 ? Vector3d.Cross(tangents[0], tangents[1]) : Vector3d.Zero;
        return square.Length > 1e-3 ? square / square.Length : (tangents.Length > 0 ? tangents[0] : Vector3d.UnitX).AnyPerpendicular();
    }

    private static ImmutableArray<Vector3d> Tangents(Evidence evidence)
    {
        Vector3d[] witnesses = [evidence.WitnessFirst, evidence.WitnessSecond];
        return [.. evidence.Drawing.Parts.Select((part, index) => Tangent(part, witnesses[Math.Min(index, 1)])).Where(t => t.LengthSquared > 0)];
    }

    private static Vector3d Tangent(DrawnPart part, Vector3d near)
    {
        if (part.Points.Length < 2) return PieceTangent.Of(part, near);
        Vector3d best = Vector3d.Zero;
        double bestDistance = double.PositiveInfinity;
        for (int i = 1; i < part.Points.Length; i++)
        {
            Vector3d from = part.Points[i - 1];
            Vector3d along = part.Points[i] - from;
            if (along.LengthSquared <= 0) continue;
            double share = Math.Clamp(Vector3d.Dot(near - from, along) / along.LengthSquared, 0, 1);
            double distance = (from + (along * share) - near).Length;
            if (distance < bestDistance - Worth) (best, bestDistance) = (along / along.Length, distance);
        }

        return best;
    }

    private static IEnumerable<Vector3d> Candidates(Vector3d across, ImmutableArray<Vector3d> tangents, bool hasPieces)
    {
        // The eye's places in the order of habit: behind, from the left, from below.
        List<Vector3d> wanted = [-Vector3d.UnitX, Vector3d.UnitY, -Vector3d.UnitZ];
        if (tangents.Length > 0) wanted.Add(Vector3d.Cross(across, tangents[0]));
        if (tangents.Length > 1) wanted.AddRange([Vector3d.Cross(across, tangents[1]), tangents[0] + tangents[1], tangents[0] - tangents[1]]);
        if (hasPieces)
        {
            // Broad parts may hide the gap from every side of habit: look from all around.
            Vector3d one = across.AnyPerpendicular(), other = Vector3d.Cross(across, one);
            wanted.AddRange([one, other, one + other, one - other]);
        }

        foreach (Vector3d direction in wanted)
        {
            Vector3d inPlane = direction - (across * Vector3d.Dot(direction, across));
            if (inPlane.Length > 0.3) yield return inPlane / inPlane.Length;
        }
    }

    private static double WorthOf(Vector3d toward, ImmutableArray<Vector3d> tangents, bool hasPieces)
    {
        double shown = tangents.IsEmpty ? 1 : tangents.Min(t => Vector3d.Cross(t, toward).Length);
        // The edges of broad parts need not be seen quite square: a view that a reader knows is better.
        if (hasPieces) shown = Math.Min(shown, SquareEnough);
        double alongAxis = Math.Max(Math.Abs(toward.X), Math.Max(Math.Abs(toward.Y), Math.Abs(toward.Z)));
        return shown + (AlongAxisBonus * alongAxis);
    }

    /// <summary>The share of the gap that something of the parts hides from an eye there.</summary>
    private static double Hidden(Vector3d toward, Vector3d across, Evidence evidence)
    {
        Vector3d between = evidence.WitnessSecond - evidence.WitnessFirst;
        // Of parts that overlap each hides the place from every side.
        if (evidence.Value < 0 || between.Length < HiddenSlackMm * 4) return 0;
        ViewPlane plane = Oriented(toward, across);
        Silhouette[] parts = [.. evidence.Drawing.Parts.Where(p => !p.Dashed).Select(p => Silhouette.Of(p, plane.OnPage, 1))];
        int hidden = 0;
        for (int step = 1; step <= GapSteps; step++)
        {
            PagePoint place = plane.OnPage(evidence.WitnessFirst + (between * ((double)step / (GapSteps + 1))));
            if (parts.Any(p => p.RoomBeside(place) < -HiddenSlackMm)) hidden++;
        }

        return (double)hidden / GapSteps;
    }

    private PagePoint OnPage(Vector3d point)
    {
        (double right, double up) = Project(point);
        return new PagePoint(right, -up);
    }

    private static ViewPlane Oriented(Vector3d toward, Vector3d across)
    {
        // Of the two sides, the one a person looks from: below, then left, then behind.
        bool isVertical = Math.Abs(toward.Z) > 0.8;
        double sign = isVertical ? -toward.Z : Math.Abs(toward.Y) >= Math.Abs(toward.X) ? toward.Y : -toward.X;
        if (sign < 0) toward = -toward;
        Vector3d wanted = isVertical ? Vector3d.UnitX : Vector3d.UnitZ;
        Vector3d up = (wanted - (toward * Vector3d.Dot(wanted, toward))).NormalizedOr(toward.AnyPerpendicular());
        return new ViewPlane(toward, Vector3d.Cross(up, toward), up, across);
    }
}
