using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Gaps;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>Parts posed in the vehicle frame: chains as thick line, other shapes as their convex pieces near the narrowest place.</summary>
internal sealed class DrawingBuilder(VehicleMotion motion)
{
    // A drawing is read to a millimetre or two: nodes that stick out less are not opened.
    private const double CoarseMm = 3;
    private const int Decimals = 2;
    private const double LeastNearMm = 240;
    private const int MostPieces = 200;

    public DrawingCard Draw(ImmutableArray<Part> parts, AxleModule? module, WorstPlace place)
    {
        SolvedPose? solved = place.Pose.IsEmpty ? null : module?.Motion.At(place.Pose.AsSpan());
        Vector3d middle = Vector3d.Lerp(place.First, place.Second, 0.5);
        double near = Math.Max(LeastNearMm, 3 * (place.First - place.Second).Length);
        return new DrawingCard([.. parts.Select(part => Drawn(part, solved, middle, near))]);
    }

    private DrawnPart Drawn(Part part, SolvedPose? solved, Vector3d middle, double nearMm)
    {
        switch (part.Form)
        {
            case PartForm.Hose hose:
                return new DrawnPart(part.Id, [.. part.Form.Ends.Select(e => Posed(e, solved))], hose.OutsideDiameter.At(motion.Parameters.Span) / 2, true);
            case PartForm.BumpStop or PartForm.LimitStrap or PartForm.SteeringStop or PartForm.Shock { Sleeves: null }:
                return new DrawnPart(part.Id, [.. part.Form.Ends.Select(e => Posed(e, solved))], 0, true);
        }

        ImmutableArray<ShapeMember> members = PartShapes.Of(part, motion, motion.Parameters.Span);
        if (members is [{ Swept: RigidSolid { Solid: CapsuleChain chain } rigid }])
            return new DrawnPart(part.Id, [.. chain.Points.Select(p => Motion(rigid.Body, solved).Apply(p))], chain.RadiusMm, false);
        var pieces = new List<DrawnPiece>();
        foreach (ShapeMember member in members) Add(member.Swept, solved, middle, nearMm, pieces);
        return new DrawnPart(part.Id, [], 0, false) { Pieces = [.. pieces.OrderBy(p => Far(p, middle)).Take(MostPieces)] };
    }

    private static void Add(SweptSolid swept, SolvedPose? solved, Vector3d middle, double nearMm, List<DrawnPiece> pieces)
    {
        switch (swept)
        {
            case RigidSolid rigid:
                AddNear(rigid.Solid, Motion(rigid.Body, solved), middle, nearMm, pieces);
                break;
            case BlendedChain wire:
                RigidMotion lower = Motion(wire.NearBody, solved), upper = Motion(wire.FarBody, solved);
                Vector3d[] points = [.. wire.Points.Select((p, i) => Vector3d.Lerp(lower.Apply(p), upper.Apply(p), wire.Shares[i]))];
                AddNear(new CapsuleChain(points, wire.RadiusMm), RigidMotion.Identity, middle, nearMm, pieces);
                break;
        }
    }

    private static void AddNear(Solid solid, RigidMotion at, Vector3d middle, double nearMm, List<DrawnPiece> pieces)
    {
        Span<Vector3d> room = stackalloc Vector3d[Piece.MaximumCorners];
        ReadOnlySpan<Vector3d> place = [middle];
        var nodes = new Stack<int>([0]);
        while (nodes.TryPop(out int node))
        {
            Span<Vector3d> corners = room[..solid.Corners(node, room)];
            foreach (ref Vector3d corner in corners) corner = at.Apply(corner);
            var piece = new Piece(corners, solid.Kind(node), solid.Radius(node));
            if (SignedGap.Measure(piece, new Piece(place, PieceKind.Simplex, nearMm)).Gap > 0) continue;
            if (solid.IsLeaf(node) || solid.Thickness(node) <= CoarseMm)
            {
                pieces.Add(new DrawnPiece([.. Rounded(corners)], Math.Round(solid.Radius(node), Decimals)));
            }
            else
            {
                nodes.Push(solid.Right(node));
                nodes.Push(solid.Left(node));
            }
        }
    }

    private static Vector3d[] Rounded(ReadOnlySpan<Vector3d> corners)
    {
        var rounded = new Vector3d[corners.Length];
        for (int i = 0; i < rounded.Length; i++)
            rounded[i] = new Vector3d(Math.Round(corners[i].X, Decimals), Math.Round(corners[i].Y, Decimals), Math.Round(corners[i].Z, Decimals));
        return rounded;
    }

    private static double Far(DrawnPiece piece, Vector3d middle) => piece.Corners.Min(c => (c - middle).Length);

    private static RigidMotion Motion(int body, SolvedPose? solved) => solved is null || body == 0 ? RigidMotion.Identity : solved[body];

    private Vector3d Posed(Place place, SolvedPose? solved) => Motion(motion.Find(place.Body).Number, solved).Apply(place.At.At(motion.Parameters.Span));
}
