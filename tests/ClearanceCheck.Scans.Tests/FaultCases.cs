using System.Text;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Tests;

/// <summary>One file, or more, for every message of the room. A case is named after the message's id, and after a point by what differs.</summary>
internal static partial class FaultCases
{
    public static IReadOnlyDictionary<string, Func<Reading>> All { get; } = Claims().Concat(Stl()).Concat(Ply()).Concat(Gltf()).ToDictionary();

    private static Dictionary<string, Func<Reading>> Claims() => new()
    {
        ["other-format"] = () => Reading.Of("box.obj", "v 0 0 0"),
        ["empty-file"] = () => Reading.Of("box.stl", ""),
        ["too-large"] = () => Reading.Of("box.stl", new byte[ScanLimits.MostBytes + 1]),
        ["axes-not-square"] = () => Box(Reading.BoxClaims with { Up = ScanAxis.PlusZ, Forward = ScanAxis.MinusZ }),
        ["shift-not-finite"] = () => Box(Reading.BoxClaims with { Shift = new Vector3d(0, double.NaN, 0) }),
        ["no-size"] = () => Box(Reading.BoxClaims with { Sizes = [] }),
        ["size-not-positive"] = () => Box(Sized(ScanSide.Y, 0, 1)),
        ["size-not-positive.no-number"] = () => Box(Sized(ScanSide.Y, double.NaN, 1)),
        ["size-too-loose"] = () => Box(Sized(ScanSide.Z, 10, 1.5)),
        ["size-too-loose.no-number"] = () => Box(Sized(ScanSide.Z, 10, double.NaN)),
        ["size-differs.unit"] = () => Box(Sized(ScanSide.X, 1016, 2)),
        ["size-differs.axis"] = () => Box(Sized(ScanSide.X, 24, 1)),
        ["size-differs.nothing-fits"] = () => Box(Sized(ScanSide.Longest, 43, 2)),
        ["size-differs.two"] = () => Box(Reading.BoxClaims with { Sizes = [new(ScanSide.X, 400, 1), new(ScanSide.Z, 100, 1), new(ScanSide.Y, 24, 1)] }),
        ["out-of-range"] = () => Reading.Of("far.stl", MeshBytes.StlBinary(TestMesh.Box.Mapped(p => p * 40_000)), Sized(ScanSide.X, 1_600_000, 1)),
        ["out-of-range.shifted-back"] = () => Reading.Of("far.stl", MeshBytes.StlText(TestMesh.Box.Mapped(p => p + new Vector3d(1.5e6, 0, 0))), Reading.BoxClaims with { Shift = new Vector3d(-1.5e6, 0, 0) }),
        ["out-of-range.shifted"] = () => Box(Reading.BoxClaims with { Shift = new Vector3d(0, 0, -1e6 - 10) }),
        ["no-triangles"] = () => Reading.Of("none.stl", MeshBytes.StlBinary(new TestMesh([], []))),
        ["no-triangles.cloud"] = () => Reading.Of("cloud.ply", "ply\nformat ascii 1.0\nelement vertex 1\nproperty float x\nproperty float y\nproperty float z\nend_header\n1 2 3\n"),
        ["flat-triangles"] = () => Reading.Of("flat.stl", MeshBytes.StlText(new TestMesh([new(0, 0, 0), new(40, 0, 0), new(0.1, 0.3, 0.7), new(10, 30, 70), new(0.2, 0.6, 1.4)], [0, 1, 2, 0, 1, 1, 0, 2, 4]))),
        ["too-many-points"] = () => Reading.Of("many.stl", Different((ScanLimits.MostPoints / 3) + 1)),
    };

    private static Dictionary<string, Func<Reading>> Stl() => new()
    {
        ["stl-too-short"] = () => Reading.Of("box.stl", MeshBytes.StlBinary(TestMesh.Box)[..80]),
        ["stl-ends"] = () => Reading.Of("box.stl", MeshBytes.StlBinary(TestMesh.Box)[..^30]),
        ["stl-ends.solid"] = () => Reading.Of("box.stl", MeshBytes.StlBinary(TestMesh.Box, "solid")[..^30]),
        ["stl-ends.bomb"] = () => Reading.Of("bomb.stl", [.. new byte[80], 0x00, 0x94, 0x35, 0x77]),
        ["stl-goes-on"] = () => Reading.Of("box.stl", [.. MeshBytes.StlBinary(TestMesh.Box), .. new byte[50]]),
        ["too-many-triangles"] = () => Reading.Of("many.stl", Claiming(ScanLimits.MostTriangles + 1)),
        ["not-finite.stl"] = () => Reading.Of("box.stl", MeshBytes.StlBinary(TestMesh.Box.Mapped(p => p.X > 0 ? p * float.NaN : p))),
        ["not-finite.stl-text"] = () => StlText("vertex 32 4 1", "vertex 32 Infinity 1"),
        ["not-finite.stl-text-huge"] = () => StlText("vertex 32 4 1", "vertex 32 1e999 1"),
        ["stl-word"] = () => StlText("outer loop", "outer lopp"),
        ["stl-word.four-corners"] = () => StlText("    endloop", "    vertex 1 2 3\n    endloop"),
        ["stl-word.after"] = () => Reading.Of("box.stl", [.. MeshBytes.StlText(TestMesh.Box), .. "and more\n"u8]),
        ["stl-text-ends"] = () => Reading.Of("box.stl", MeshBytes.StlText(TestMesh.Box)[..^"endsolid a box of a test\n".Length]),
        ["stl-text-ends.number"] = () => Reading.Of("box.stl", "solid x\nfacet normal 0 0 1\nouter loop\nvertex 1 2"),
        ["text-number"] = () => StlText("vertex 32 4 1", "vertex 32 4mm 1"),
        ["text-number.comma"] = () => StlText("vertex 32 4 1", "vertex 32,5 4 1"),
    };

    private static Dictionary<string, Func<Reading>> Ply() => new()
    {
        ["ply-start"] = () => Reading.Of("box.ply", "solid box\n"),
        ["ply-header-line"] = () => PlyText("property double y", "property real y"),
        ["ply-header-line.version"] = () => PlyText("ascii 1.0", "ascii 2.0"),
        ["ply-header-line.format"] = () => PlyText("format ascii 1.0", "format text 1.0"),
        ["ply-header-line.negative"] = () => PlyText("element vertex 8", "element vertex -8"),
        ["ply-header-line.twice"] = () => PlyText("element face 12", "element vertex 12"),
        ["ply-header-line.twice-column"] = () => PlyText("property double y", "property double x"),
        ["ply-header-line.no-format"] = () => PlyText("format ascii 1.0\n", ""),
        ["ply-header-line.list-of-floats"] = () => PlyText("list uchar int", "list float int"),
        ["ply-header-ends"] = () => PlyText("end_header\n", "comment end_header " + new string('x', ScanLimits.MostHeader)),
        ["ply-no-coordinates"] = () => PlyText("double z", "double depth"),
        ["ply-no-coordinates.list"] = () => PlyText("property double z", "property list uchar double z"),
        ["ply-no-corners"] = () => PlyText("vertex_indices", "corners"),
        ["ply-no-corners.floats"] = () => PlyText("list uchar int", "list uchar float"),
        ["ply-strips"] = () => PlyText("end_header", "element tristrips 0\nproperty list int int vertex_indices\nend_header"),
        ["ply-too-many-points"] = () => PlyText("element vertex 8", "element vertex 2000000000"),
        ["too-many-triangles.ply"] = () => PlyText("element face 12", "element face 2000000000"),
        ["too-many-triangles.fan"] = () => Reading.Of("fan.ply", Fan(ScanLimits.MostTriangles + 3)),
        ["ply-count"] = () => PlyText("element vertex 8", "element vertex 3000000"),
        ["ply-count.other"] = () => PlyText("element face 12", "element edge 9000000000000000000\nproperty list int int x\nelement face 12"),
        ["ply-ends"] = () => PlyText("3 1 7 3\n", "3 1 7"),
        ["ply-ends.binary"] = () => Reading.Of("box.ply", MeshBytes.PlyBinary(TestMesh.Box, true)[..^1]),
        ["ply-goes-on"] = () => PlyText("element face 12", "element face 11"),
        ["ply-goes-on.binary"] = () => Reading.Of("box.ply", [.. MeshBytes.PlyBinary(TestMesh.Box, false), 0]),
        ["ply-index"] = () => PlyText("3 1 7 3\n", "3 1 7.5 3\n"),
        ["ply-index.nan"] = () => PlyText("3 1 7 3\n", "3 1 NaN 3\n"),
        ["no-such-point.ply"] = () => PlyText("3 1 7 3\n", "3 1 8 3\n"),
        ["no-such-point.ply-negative"] = () => PlyText("3 1 7 3\n", "3 1 -1 3\n"),
        ["no-such-point.ply-none"] = () => Reading.Of("fan.ply", Encoding.ASCII.GetString(Fan(3)).Replace("vertex 1", "vertex 0", StringComparison.Ordinal).Replace("end_header\n\0\0\0\0\0\0\0\0\0\0\0\0", "end_header\n", StringComparison.Ordinal)),
        ["ply-list-length"] = () => PlyText("3 1 7 3\n", "-3 1 7 3\n"),
        ["ply-list-length.bomb"] = () => PlyText("3 1 7 3\n", "2000000000 1 7 3\n"),
        ["text-number.ply"] = () => PlyText("3 1 7 3\n", "3 1 seven 3\n"),
        ["not-finite.ply"] = () => PlyText("32 4 1\n", "32 nan 1\n"),
        ["not-finite.ply-binary"] = () => Reading.Of("box.ply", MeshBytes.PlyBinary(TestMesh.Box.Mapped(p => p.X > 0 ? p * float.PositiveInfinity : p), false)),
        ["ply-fanned"] = () => PlyText("element face 12", "element face 11", "3 0 1 3\n3 0 3 2\n", "4 0 1 3 2\n"),
        ["ply-too-few-corners"] = () => PlyText("element face 12", "element face 14", "3 0 1 3\n", "3 0 1 3\n2 0 1\n0\n"),
        ["ply-unused-points"] = () => PlyText("element vertex 8", "element vertex 9", "3 0 1 3\n", "900 900 900\n3 0 1 3\n"),
    };

    private static Reading Box(ScanClaims claims) => Reading.Of("box.stl", MeshBytes.StlBinary(TestMesh.Box), claims);

    private static ScanClaims Sized(ScanSide side, double mm, double within) => Reading.BoxClaims with { Sizes = [new ScanSize(side, mm, within)] };

    private static Reading StlText(string old, string fresh) => Reading.Of("box.stl", Changed(MeshBytes.StlText(TestMesh.Box), old, fresh));

    private static Reading PlyText(string old, string fresh) => Reading.Of("box.ply", Changed(MeshBytes.PlyText(TestMesh.Box), old, fresh));

    private static Reading PlyText(string old, string fresh, string secondOld, string secondFresh) =>
        Reading.Of("box.ply", Changed(Encoding.UTF8.GetBytes(Changed(MeshBytes.PlyText(TestMesh.Box), old, fresh)), secondOld, secondFresh));

    private static string Changed(byte[] file, string old, string fresh) => Changed(Encoding.UTF8.GetString(file), old, fresh);

    private static string Changed(string text, string old, string fresh)
    {
        int at = text.IndexOf(old, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, old);
        return text[..at] + fresh + text[(at + old.Length)..];
    }

    // A binary STL of so many triangles, all zero.
    private static byte[] Claiming(int triangles)
    {
        byte[] bytes = new byte[84 + (50 * triangles)];
        BitConverter.TryWriteBytes(bytes.AsSpan(80), triangles).ShouldBeTrue();
        return bytes;
    }

    // One whose corners all differ in x.
    private static byte[] Different(int triangles)
    {
        byte[] bytes = Claiming(triangles);
        for (int i = 0; i < 3 * triangles; i++) BitConverter.TryWriteBytes(bytes.AsSpan(84 + (50 * (i / 3)) + 12 + (12 * (i % 3))), (float)i);
        return bytes;
    }

    // One point and one face that names it over and over.
    private static byte[] Fan(int corners) =>
    [
        .. "ply\nformat binary_little_endian 1.0\nelement vertex 1\nproperty float x\nproperty float y\nproperty float z\nelement face 1\nproperty list uint uchar vertex_indices\nend_header\n"u8,
        .. new byte[12], .. BitConverter.GetBytes(corners), .. new byte[corners],
    ];
}
