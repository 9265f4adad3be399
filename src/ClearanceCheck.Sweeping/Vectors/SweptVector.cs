using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Vectors;

/// <summary>A vector that moves with the pose: the line between two places, or a direction that is fixed in a body.</summary>
/// <param name="Terms">Their factors add up to zero, so the frame's origin is of no account.</param>
public sealed record SweptVector(ImmutableArray<VectorTerm> Terms)
{
    // The two points that stand for a direction are this far apart, mm: what the body's place does to each is then small beside what its turn does.
    private const double FarMm = 10_000;

    /// <summary>From a place on one body to a place on another, mm.</summary>
    public static SweptVector Between(int fromBody, Vector3d from, int toBody, Vector3d to) => new([new VectorTerm(1, toBody, to), new VectorTerm(-1, fromBody, from)]);

    /// <summary>A direction fixed in a body.</summary>
    /// <param name="body">The body's number.</param>
    /// <param name="direction">In the body's own coordinates, of any length but zero.</param>
    /// <param name="near">A point near the middle of the body: the nearer, the tighter the bound.</param>
    public static SweptVector Fixed(int body, Vector3d direction, Vector3d near)
    {
        Vector3d unit = direction.NormalizedOr(Vector3d.UnitX);
        return new SweptVector([new VectorTerm(1 / FarMm, body, near + (FarMm * unit)), new VectorTerm(-1 / FarMm, body, near)]);
    }
}
