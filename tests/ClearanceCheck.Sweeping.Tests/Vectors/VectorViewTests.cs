using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Sweeping.Vectors;

namespace ClearanceCheck.Sweeping.Tests.Vectors;

/// <summary>On which side of the interpolation of its corner values a vector may lie.</summary>
public sealed class VectorViewTests
{
    [Theory]
    [InlineData(1, 1, 1)]
    [InlineData(1, -1, 0)]
    [InlineData(-1, 1, 0)]
    [InlineData(-1, -1, 1)]
    public void What_curves_upwards_lies_below_its_chord_and_never_above(double factor, double direction, double share)
    {
        // z = q^2: over a cell 2 mm wide it lies w^2 2 / 8 = 1 mm below its chord in the middle.
        var cell = new CellGeometry(1, 0, 1) { Widths = { [0] = 2 } };
        cell.Tracks[0].Curvatures[0] = new Curvature(0, 0, 0, 0, 2, 2, 2);
        var view = new VectorView(new SweptVector([new VectorTerm(factor, 1, Vector3d.Zero)]), 0, 0);
        view.Load(cell);

        view.RemainderBelow(0, direction * Vector3d.UnitZ).ShouldBe(share, 1e-12);
    }
}
