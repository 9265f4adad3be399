using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Sweeping;

/// <summary>A solid with what carries it. A closed family.</summary>
public abstract record SweptSolid
{
    private protected SweptSolid()
    {
    }
}

/// <summary>A solid fixed to one body.</summary>
/// <param name="Body">The body's number; 0 is the chassis.</param>
/// <param name="Solid">In the body's own coordinates, mm.</param>
public sealed record RigidSolid(int Body, Solid Solid) : SweptSolid;

/// <summary>A wire between two bodies, such as a coil spring's between its seats: each point is an average, with weights that never change, of two places.</summary>
/// <remarks>
/// With X a body's motion, a point p with the share s is (1 - s) X_near p + s X_far p. A frame's own motion is rigid, so the average
/// is the same in every frame, and its second derivative lies in the hull of the two bodies' own.
/// </remarks>
/// <param name="NearBody">The body that carries the points with share 0.</param>
/// <param name="FarBody">The body that carries the points with share 1.</param>
/// <param name="Points">The wire's middle line in the measured state, mm.</param>
/// <param name="Shares">For each point its share, 0 to 1.</param>
/// <param name="RadiusMm">Half of the wire's diameter.</param>
public sealed record BlendedChain(
    int NearBody, int FarBody, ImmutableArray<Vector3d> Points, ImmutableArray<double> Shares, double RadiusMm) : SweptSolid;
