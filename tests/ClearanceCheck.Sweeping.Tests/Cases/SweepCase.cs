using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Sweeping.Tests.Cases;

/// <summary>A pair of solids on two bodies of a moving system.</summary>
internal sealed record SweepCase(IMovingSystem System, int FirstBody, Solid First, int SecondBody, Solid Second)
{
    public Extreme LeastGap(SweepSettings settings) => Sweep.LeastGap(System, FirstBody, First, SecondBody, Second, settings);

    /// <summary>The objective that the sweep of the two makes least.</summary>
    public GapObjective Objective()
    {
        RigidSolid first = new(FirstBody, First), second = new(SecondBody, Second);
        return SweepOrder.IsSwapped(first, second)
            ? new GapObjective(SweepOrder.Frame(second), second, first)
            : new GapObjective(SweepOrder.Frame(first), first, second);
    }

    public SweepCase With(IMovingSystem system) => this with { System = system };
}
