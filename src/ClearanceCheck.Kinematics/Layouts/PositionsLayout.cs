using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A solid axle whose links nobody measured: three points of it were measured at several wheel positions instead.</summary>
/// <remarks>
/// Every state in which the points were measured is a position. The axle goes through all of them smoothly; what lies between is interpolated, and
/// where no position has one wheel up and one down its roll is taken as a turn about the middle between the hubs.
/// </remarks>
public sealed class PositionsLayout : AxleLayout
{
    // Wheels that stand within this of each other are level: a hand-held jack does no better.
    private const double LevelMm = 5;

    public override string Id => Axle.GuidedLayout;

    public override string Meaning => "a solid axle measured at several wheel positions";

    public override ImmutableArray<LayoutPoint> Points { get; } =
    [
        .. Hubs(_ => "axle"),
        new("marker", "the mark on the axle, well above, below, ahead of or behind the line through both hubs", "axle"),
    ];

    public override ImmutableArray<string> Steerings => ["lock-only"];

    public override string Assumption =>
        "goes smoothly through the positions in which it was measured; what lies between them and beyond them is interpolated, not known.";

    public override ImmutableArray<string> Bodies(Axle axle) => ["axle"];

    public override IEnumerable<Joint> Joints(LayoutPlaces places)
    {
        Axle axle = places.Axle;
        Vector3d left = places.At("hub-left"), right = places.At("hub-right"), marker = places.At("marker"), middle = Vector3d.Lerp(left, right, 0.5);
        Rotation measured = Frame(left, right, marker);
        var positions = new List<(double First, double Second, ImmutableArray<double> Figures)>
        {
            (axle.Left.MeasuredTravelMm(places.Parameters.Span), axle.Right.MeasuredTravelMm(places.Parameters.Span), [0, 0, 0, 0]),
        };
        foreach (IGrouping<string, ComparedPoint> state in axle.ComparedPoints.GroupBy(p => p.State))
        {
            if (At("hub-left") is not { } l || At("hub-right") is not { } r || At("marker") is not { } m || !axle.OtherStates.TryGetValue(state.Key, out AxleState? stood)) continue;
            Vector3d moved = Vector3d.Lerp(l, r, 0.5) - middle;
            Rotation turn = Frame(l, r, m) * measured.Inverse;
            (double leftMm, double rightMm) = axle.TravelsIn(stood, places.Parameters.Span);
            positions.Add((leftMm, rightMm, [moved.X, moved.Y, turn.Y / turn.W, turn.Z / turn.W]));

            Vector3d? At(string name) => state.FirstOrDefault(p => p.Name == name)?.Point.At(places.Parameters.Span);
        }

        yield return new Joint.Guide("measured positions", places.Body("axle"), middle, GuidePath.Through(0, 1, positions, LevelMm));
    }

    // Takes x, y, z to the axle's own axes: y along the hubs, x towards the marker.
    private static Rotation Frame(Vector3d left, Vector3d right, Vector3d marker)
    {
        Vector3d y = (left - right).NormalizedOr(Vector3d.UnitY), arm = marker - left;
        Vector3d x = (arm - (Vector3d.Dot(arm, y) * y)).NormalizedOr(Vector3d.UnitX), z = Vector3d.Cross(x, y);
        return Rotation.FromAxes(x, y, z);
    }
}
