using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>A pair of solids on two bodies of a moving system.</summary>
internal sealed record SweepCase(IMovingSystem System, int FirstBody, Solid First, int SecondBody, Solid Second)
{
    public Extreme LeastGap(SweepSettings settings) => Sweep.LeastGap(System, FirstBody, First, SecondBody, Second, settings);

    public SweepCase With(IMovingSystem system) => this with { System = system };
}
