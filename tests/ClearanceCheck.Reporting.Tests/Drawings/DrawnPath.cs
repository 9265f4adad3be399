using System.Globalization;
using System.Text.RegularExpressions;
using ClearanceCheck.Reporting.Drawings;

namespace ClearanceCheck.Reporting.Tests.Drawings;

/// <summary>A path's data read back: its loops, and how often they go around a place.</summary>
internal sealed partial class DrawnPath
{
    private readonly List<List<PagePoint>> loops = [];

    public DrawnPath(string data)
    {
        foreach (string loop in data.Split('M', StringSplitOptions.RemoveEmptyEntries))
        {
            double[] numbers = [.. Numbers().Matches(loop).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
            PagePoint at = new(0, 0);
            List<PagePoint> corners = [];
            for (int i = 0; i < numbers.Length; i += 2) corners.Add(at += new PagePoint(numbers[i], numbers[i + 1]));
            loops.Add(corners);
        }
    }

    public IReadOnlyList<IReadOnlyList<PagePoint>> Loops => loops;

    public IEnumerable<PagePoint> Corners => loops.SelectMany(l => l);

    /// <summary>Crossings of a ray to the right, upward ones counted plus: not zero inside by the rule that SVG fills by.</summary>
    public int Winding(PagePoint at)
    {
        int winding = 0;
        foreach (List<PagePoint> loop in loops)
            for (int i = 0; i < loop.Count; i++)
            {
                (PagePoint a, PagePoint b) = (loop[i], loop[(i + 1) % loop.Count]);
                if ((a.Y > at.Y) == (b.Y > at.Y) || a.X + ((at.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)) <= at.X) continue;
                winding += b.Y > a.Y ? 1 : -1;
            }

        return winding;
    }

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Numbers();
}
