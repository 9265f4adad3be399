using ClearanceCheck.Sweeping.Tests.Cases;

namespace ClearanceCheck.Sweeping.Tests;

public sealed class Scratch
{
    [Fact]
    public void Figures()
    {
        foreach (ulong seed in new ulong[] { 64, 113, 22, 12, 110, 5, 23, 26 })
        {
            SweepCase c = RandomCases.Draw(seed);
            Extreme e = c.LeastGap(new SweepSettings { ToleranceMm = 0.5, MaximumCells = 2000 });
            Console.WriteLine($"{seed} {e.Value} {e.Bound} cells {e.Cells}");
            Console.WriteLine($"  pose {string.Join(", ", e.Basins[0].Pose)} box {string.Join(", ", c.System.Box.Coordinates)}");
            foreach (string s in SweepSearch.Dbg) Console.WriteLine("   " + s);
        }
    }
}
