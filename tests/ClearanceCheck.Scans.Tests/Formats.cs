namespace ClearanceCheck.Scans.Tests;

/// <summary>Every format that is read, as a way to write a mesh.</summary>
internal static class Formats
{
    public const string BufferFile = "points of box.bin";

    public static IReadOnlyDictionary<string, (string Name, Func<TestMesh, byte[]> Write)> All { get; } = new Dictionary<string, (string Name, Func<TestMesh, byte[]> Write)>
    {
        ["stl-binary"] = ("box.stl", mesh => MeshBytes.StlBinary(mesh)),
        ["stl-binary-solid"] = ("box.STL", mesh => MeshBytes.StlBinary(mesh, "solid is no proof of text")),
        ["stl-text"] = ("box.stl", mesh => MeshBytes.StlText(mesh)),
        ["stl-text-crlf"] = ("box.stl", mesh => MeshBytes.StlText(mesh, "\r\n")),
        ["ply-text"] = ("box.ply", mesh => MeshBytes.PlyText(mesh)),
        ["ply-text-crlf"] = ("box.ply", mesh => MeshBytes.PlyText(mesh, "\r\n")),
        ["ply-little"] = ("box.ply", mesh => MeshBytes.PlyBinary(mesh, false)),
        ["ply-big"] = ("box.ply", mesh => MeshBytes.PlyBinary(mesh, true)),
        ["glb"] = ("box.glb", GltfBytes.Glb),
        ["gltf-embedded"] = ("box.gltf", GltfBytes.Embedded),
        ["gltf-beside"] = ("box.gltf", mesh => System.Text.Encoding.UTF8.GetBytes(GltfBytes.Head(mesh, "points%20of%20box.bin"))),
    };

    public static TheoryData<string> Names { get; } = [.. All.Keys];

    public static Reading Read(string format, TestMesh mesh, ScanClaims? claims = null) =>
        Reading.Of(All[format].Name, All[format].Write(mesh), claims, name => name == BufferFile ? GltfBytes.Buffer(mesh) : null);
}
