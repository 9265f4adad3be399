using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>The rigid pieces that stand for the bent leaves of a leaf spring.</summary>
public static class LeafPieces
{
    private static readonly ImmutableArray<string> Halves = ["fixed", "shackle"];

    /// <summary>Names of the bodies, from the clamp to the fixed eye and from the clamp to the shackle's.</summary>
    public static ImmutableArray<string> Names(string partId) =>
        [.. Halves.SelectMany(half => Enumerable.Range(0, LeafPiece.Count).Select(i => $"{partId}/{half}-{i + 1}"))];

    /// <summary>The pieces, in the order of their names.</summary>
    /// <param name="part">A part whose form is a leaf spring.</param>
    /// <param name="parameters">Values of the parameter vector.</param>
    /// <param name="number">Number of a body by its name.</param>
    public static ImmutableArray<LeafPiece> Of(Part part, ReadOnlySpan<double> parameters, Func<string, int> number)
    {
        var form = (PartForm.LeafSpring)part.Form;
        ImmutableArray<string> names = Names(part.Id);
        Joint.Leaf[] halves = LeafSpringLayout.HalvesOf(
            part.Id,
            (number(form.Seat.Body), form.Seat.At.At(parameters)),
            form.FixedEye.At.At(parameters),
            (number(form.ShackleEye.Body), form.ShackleEye.At.At(parameters)),
            form.Clamp.At(parameters));
        return [.. halves.SelectMany((leaf, half) => Enumerable.Range(0, LeafPiece.Count).Select(i => new LeafPiece(names[(half * LeafPiece.Count) + i], leaf, i)))];
    }

    /// <summary>The line along which the leaf lies flat in its clamp, measured state, mm, and the direction up from it.</summary>
    public static (Vector3d From, Vector3d To, Vector3d Up) Clamped(PartForm.LeafSpring form, ReadOnlySpan<double> parameters)
    {
        Vector3d pin = form.Seat.At.At(parameters), along = LeafSpringLayout.Tangent(form.FixedEye.At.At(parameters), pin, form.ShackleEye.At.At(parameters));
        Vector3d half = along * (0.5 * form.Clamp.At(parameters)), side = Vector3d.Cross(Vector3d.UnitZ, along).NormalizedOr(Vector3d.UnitY);
        return (pin - half, pin + half, Vector3d.Cross(along, side));
    }
}
