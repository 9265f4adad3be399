using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Scans;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A scanned surface: a mesh file and what the file itself does not say.</summary>
internal static class ScanForm
{
    private static readonly Dictionary<string, ScanAxis> Axes = ScanAxes.Words.ToDictionary(w => w, w => ScanAxes.FromWord(w)!.Value, StringComparer.Ordinal);

    private static readonly ImmutableArray<(string Key, ScanSide Side)> Sides = [("x", ScanSide.X), ("y", ScanSide.Y), ("z", ScanSide.Z), ("longest", ScanSide.Longest)];

    public static PartForm? Read(PartSource part) => part.Reader.Required("scan", "the mesh file and how it lies").Mapping(r => ReadScan(r, part));

    private static PartForm.Scanned? ReadScan(MappingReader reader, PartSource part)
    {
        Field file = reader.Required("file", "the mesh file beside this one: .stl, .ply, .glb or .gltf");
        Placed<string>? path = file.RelativePath();
        Placed<LengthUnit>? unit = reader.Required("unit", "what one stands for in the mesh file").Unit();
        Placed<ScanAxis>? up = reader.Required("up", "the mesh file's direction that points up on the vehicle").Choice(Axes);
        Placed<ScanAxis>? forward = reader.Required("forward", "the mesh file's direction that points forward").Choice(Axes);
        Boxed<ImmutableArray<ScanSize>>? sizes = reader
            .Required("size", "how long the thing itself is along x, y, z or longest: what shows a wrong unit or axis")
            .Mapping(r => ReadSizes(r, part));
        Field atField = reader.Optional("at");
        Placed<LengthTriple>? at = atField.Triple();
        double? own = Within.Read(reader) ?? part.Within;
        if (path is null || unit is null || up is null || forward is null || sizes is null || (atField.IsPresent && at is null)) return null;
        if (!part.StandsAsItsAxle("a scan lies as it was scanned")) return null;
        var claims = new ScanClaims(unit.Value, up.Value, forward.Value, sizes.Value) { Shift = at?.Value.Millimetres() ?? Vector3d.Zero };
        return Load(file, path.Value, claims, part.Draft) is { } scan ? new PartForm.Scanned(scan, Shift(own, at, part)) : null;
    }

    private static Boxed<ImmutableArray<ScanSize>>? ReadSizes(MappingReader reader, PartSource part)
    {
        double? own = Within.Read(reader);
        var sizes = ImmutableArray.CreateBuilder<ScanSize>();
        bool faulty = false;
        foreach ((string key, ScanSide side) in Sides)
        {
            Field field = reader.Optional(key);
            if (field.Length(LengthRange.SizeOnVehicle) is not { } typed)
            {
                faulty |= field.IsPresent;
                continue;
            }

            double length = typed.Value.Length.Millimetres;
            sizes.Add(new ScanSize(side, length, own ?? AssumedWithin(key, length, part)));
        }

        return faulty ? null : new(sizes.ToImmutable());
    }

    private static double AssumedWithin(string key, double lengthMm, PartSource part)
    {
        double within = Math.Min(Defaults.ScanMm + Defaults.TapeMm, lengthMm * ScanLimits.MostWithin);
        part.Draft.Assume(
            part.Path($"scan/size/{key}"), $"How near the scan must be to this length not typed: {NumberFormat.UpTo(within, 1)} mm (scan and tape together; common practice, no source).");
        return within;
    }

    private static Vehicles.Scan? Load(Field field, string path, ScanClaims claims, VehicleDraft draft)
    {
        if (draft.File.Beside(path) is not { } content)
        {
            FileMessages.NoSuchFile(field, path, "mesh file");
            return null;
        }

        Note(path, draft);
        string folder = path[..(path.LastIndexOf('/') + 1)];
        Scans.Scan? scan = ScanReader.Read(path, content, claims, name => Buffer(folder + name, draft), field.Node!.Span, draft.Diagnostics);
        return scan is null ? null : new Vehicles.Scan(path, Solid(scan));
    }

    private static ReadOnlyMemory<byte>? Buffer(string path, VehicleDraft draft)
    {
        ReadOnlyMemory<byte>? content = draft.File.Beside(path);
        if (content is not null) Note(path, draft);
        return content;
    }

    private static void Note(string path, VehicleDraft draft)
    {
        if (!draft.FilesBeside.Contains(path)) draft.FilesBeside.Add(path);
    }

    private static SimplexTree Solid(Scans.Scan scan)
    {
        var triangles = ImmutableArray.CreateBuilder<Simplex>(scan.TriangleCount);
        for (int i = 0; i < scan.TriangleCount; i++)
        {
            (int a, int b, int c) = scan.Triangle(i);
            triangles.Add(new Simplex(a, b, c, 0));
        }

        return new SimplexTree(scan.Points, triangles.MoveToImmutable());
    }

    // The scan lies where it lies; what is uncertain is by how much it is off, so that is the parameter.
    private static MeasuredPoint Shift(double? own, Placed<LengthTriple>? at, PartSource part)
    {
        double half = Math.Max(own ?? Math.Max(Defaults.ScanMm, part.Draft.FileWithin ?? 0), at?.Value.HalfStepMm() ?? 0);
        string place = at is null ? "Its file's zero is taken as the vehicle's zero" : $"Its file's zero is placed at {at.Span.Text}";
        string give = $"the scan as a whole may lie {NumberFormat.UpTo(half, 1)} mm each way beside that{(own is null ? " (scan; common practice, no source)" : "")}";
        part.Draft.Assume(part.Path("scan"), $"{place}; {give}.");
        part.Assume("A scan is a surface without an inside: a part that lies wholly inside it counts as apart from it.");
        return part.Draft.Computed(part.Path("scan"), Vector3d.Zero, half, own is null);
    }
}
