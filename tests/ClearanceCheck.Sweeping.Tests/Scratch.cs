using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Sweeping.Tests.Cases;

namespace ClearanceCheck.Sweeping.Tests;

public sealed class Scratch
{
    [Fact]
    public void Cpu()
    {
        var tire = new Disc(ReferenceSweepMotion.TireCentre, Vector3d.UnitY, ReferenceSweepMotion.TireRadiusMm, ReferenceSweepMotion.TireHalfWidthMm);
        var line = new CapsuleChain(ReferenceLine.Points, ReferenceLine.RadiusMm);
        for (int r = 0; r < 4; r++)
        {
            long solves = 0;
            var before = Environment.CpuUsage.UserTime;
            long alloc = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < 50; i++)
            {
                var m = new ReferenceSweepMotion();
                Sweep.LeastGap(m, 0, line, 1, tire, new SweepSettings { ToleranceMm = 0.1 });
                solves = m.Solves;
            }

            Console.WriteLine($"reference: {(Environment.CpuUsage.UserTime - before).TotalMilliseconds / 50:F2} ms cpu, {(GC.GetAllocatedBytesForCurrentThread() - alloc) / 50} bytes, {solves} solves");
            before = Environment.CpuUsage.UserTime;
            var mm = new ReferenceSweepMotion();
            for (int i = 0; i < 10000; i++) mm.At([i * 0.01, 3, 0.1]);
            Console.WriteLine($"solve {(Environment.CpuUsage.UserTime - before).TotalMilliseconds / 10:F2} us");
        }

        for (ulong seed = 7; seed < 140; seed += 8)
        {
            SweepCase c = RandomCases.Draw(seed);
            c.LeastGap(new SweepSettings { ToleranceMm = 0.2 });
            var again = (LinkageMotion)c.System;
            long s = again.Solves;
            var before = Environment.CpuUsage.UserTime;
            Extreme e = c.LeastGap(new SweepSettings { ToleranceMm = 0.2 });
            Console.WriteLine($"linkage d{again.Box.Dimensions} s{again.Stops.Length} {(Environment.CpuUsage.UserTime - before).TotalMilliseconds:F2} ms cpu second time, solves {again.Solves - s}, cells {e.Cells} basins {e.Basins.Length}");
        }
    }
}
