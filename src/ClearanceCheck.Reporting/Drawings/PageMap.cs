using ClearanceCheck.Geometry;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>From the vehicle frame to a window of the page, to scale.</summary>
internal sealed class PageMap
{
    private readonly ViewPlane plane;
    private readonly (double Right, double Up) middle;
    private readonly double height;

    /// <param name="centre">The point of the vehicle frame in the middle of the window.</param>
    /// <param name="halfMm">What the window shows at least, from its middle to its nearer edge, in mm.</param>
    public PageMap(ViewPlane plane, Vector3d centre, double halfMm, double width, double height)
    {
        this.plane = plane;
        Width = width;
        this.height = height;
        middle = plane.Project(centre);
        UnitsPerMm = Math.Min(width, height) / 2 / halfMm;
    }

    /// <summary>Width of the window in the drawing's units.</summary>
    public double Width { get; }

    public double UnitsPerMm { get; }

    public PagePoint this[Vector3d point]
    {
        get
        {
            (double right, double up) = plane.Project(point);
            return new PagePoint((Width / 2) + ((right - middle.Right) * UnitsPerMm), (height / 2) - ((up - middle.Up) * UnitsPerMm));
        }
    }

    /// <summary>A direction on the page, y down; shorter than 1 when it leans toward the eye.</summary>
    public PagePoint Direction(Vector3d direction)
    {
        (double right, double up) = plane.Project(direction);
        return new PagePoint(right, -up);
    }

    public bool Shows(PagePoint at, double margin) => at.X >= margin && at.X <= Width - margin && at.Y >= margin && at.Y <= height - margin;
}
