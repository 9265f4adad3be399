using System.Globalization;
using System.Text;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Tests.Tables;

/// <summary>A table of linkage positions beside this file, made by an independent program (Python, NumPy, SciPy; the exact ones checked with a public multibody library).</summary>
/// <remarks>All vehicles are invented. Vehicle frame: x forward, y left, z up, mm. A rotation is a rotation vector in degrees.</remarks>
internal sealed class ReferenceTable
{
    private readonly string[] columns;

    private ReferenceTable(string[] columns, double[][] rows) => (this.columns, Rows) = (columns, rows);

    public double[][] Rows { get; }

    public static ReferenceTable Read(string name)
    {
        string[] lines = Lines(name);
        return new ReferenceTable(
            [.. lines[0].Split(',').Select(c => c.Split(' ')[0])],
            [.. lines.Skip(1).Select(l => l.Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray())]);
    }

    /// <summary>The points and figures of one case by name.</summary>
    public static Dictionary<string, double[]> Inputs(string @case) => Lines("linkage-inputs").Skip(1)
        .Select(l => l.Split(','))
        .Where(f => f[0].StartsWith(@case, StringComparison.Ordinal))
        .ToDictionary(f => f[1], f => f.Skip(2).Where(v => v.Length > 0).Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray());

    public double Value(double[] row, string column) => row[Array.IndexOf(columns, column) is >= 0 and var i ? i : throw new ArgumentException(column)];

    public Vector3d Point(double[] row, string name) => new(Value(row, name + "x"), Value(row, name + "y"), Value(row, name + "z"));

    public static Vector3d Vector(double[] v) => new(v[0], v[1], v[2]);

    private static string[] Lines(string name)
    {
        using Stream stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream(name) ?? throw new ArgumentException(name);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }
}
