using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Shapes;

/// <summary>A leaf spring: its pack in the clamp, which rides on the axle, and straight planks that hold the bent leaves up to both eyes.</summary>
/// <remarks>The pack hangs below its main leaf and is taken as thick all along as in the clamp; towards the eyes it really is thinner.</remarks>
internal static class LeafSpringShape
{
    public static ImmutableArray<ShapeMember> Of(Part part, PartForm.LeafSpring form, VehicleMotion motion, ReadOnlySpan<double> parameters)
    {
        double width = form.Width.At(parameters), leaf = form.Thickness.At(parameters), shape = form.Shape.At(parameters);
        double above = (leaf / 2) + shape, below = form.Stack.At(parameters) - (leaf / 2) + shape;
        (Vector3d from, Vector3d to, Vector3d up) = LeafPieces.Clamped(form, parameters);
        Vector3d side = Vector3d.Cross(up, to - from).NormalizedOr(Vector3d.UnitY) * (width / 2);
        var members = ImmutableArray.CreateBuilder<ShapeMember>(1 + (2 * LeafPiece.Count));
        Add(form.Seat.Body, new Plank(from, to, side, up * -below, up * above));
        foreach (LeafPiece piece in LeafPieces.Of(part, parameters, body => motion.Find(body).Number))
        {
            (Vector3d middle, Vector3d along, Vector3d across, Vector3d normal) = piece.Measured;
            LeafPieceBox box = piece.Box(width, below, above);
            Vector3d half = along * box.HalfAlongMm;
            Add(piece.Name, new Plank(middle - half, middle + half, across * box.HalfAcrossMm, normal * -box.DownMm, normal * box.UpMm));
        }

        return members.MoveToImmutable();

        void Add(string body, Plank plank) => members.Add(new ShapeMember([body], new RigidSolid(motion.Find(body).Number, plank)));
    }
}
