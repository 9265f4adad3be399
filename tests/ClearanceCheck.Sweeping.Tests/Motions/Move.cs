using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Sweeping.Tests.Motions;

/// <summary>One elementary motion of a body against its parent: a turn or a slide by a linear function of the pose.</summary>
/// <param name="Rates">Radians or shares of the direction per unit of each coordinate.</param>
internal abstract record Move(ImmutableArray<double> Rates)
{
    public abstract Move Inverse { get; }

    public abstract RigidMotion At(double amount);

    public double Amount(ReadOnlySpan<double> pose)
    {
        double sum = 0;
        for (int k = 0; k < pose.Length; k++) sum += Rates[k] * pose[k];
        return sum;
    }

    protected static ImmutableArray<double> Negated(ImmutableArray<double> rates) => [.. rates.Select(r => -r)];

    /// <summary>A turn about the line through a point along a unit axis.</summary>
    public sealed record Turn(Vector3d Point, Vector3d Axis, ImmutableArray<double> Rates) : Move(Rates)
    {
        public override Move Inverse => this with { Rates = Negated(Rates) };

        public override RigidMotion At(double amount)
        {
            Rotation turn = Rotation.About(Axis, amount);
            return new RigidMotion(turn, Point - turn.Apply(Point));
        }
    }

    /// <summary>A slide along a vector.</summary>
    public sealed record Slide(Vector3d Along, ImmutableArray<double> Rates) : Move(Rates)
    {
        public override Move Inverse => this with { Rates = Negated(Rates) };

        public override RigidMotion At(double amount) => new(Rotation.Identity, Along * amount);
    }
}
