namespace ClearanceCheck.Scans.Tests;

/// <summary>Files for the messages about glTF.</summary>
internal static partial class FaultCases
{
    private static Dictionary<string, Func<Reading>> Gltf() => new()
    {
        ["gltf-start"] = () => Reading.Of("box.gltf", "ply\n"),
        ["gltf-length"] = () => Reading.Of("box.glb", GltfBytes.Glb(TestMesh.Box)[..^4]),
        ["gltf-length.head"] = () => Reading.Of("box.glb", GltfBytes.Glb(TestMesh.Box)[..10]),
        ["gltf-version"] = () => Head("\"version\": \"2.0\"", "\"version\": \"1.0\""),
        ["gltf-version.none"] = () => Head("\"version\": \"2.0\"", ""),
        ["gltf-version.container"] = () => Reading.Of("box.glb", [.. "glTF"u8, 1, 0, 0, 0, 20, 0, 0, 0, .. new byte[8]]),
        ["gltf-chunk"] = () => Reading.Of("box.glb", [.. "glTF"u8, 2, 0, 0, 0, 20, 0, 0, 0, 1, 0, 0, 0, .. "JSON"u8]),
        ["gltf-json"] = () => Head("\"scene\": 0,", "\"scene\": 0"),
        ["gltf-too-many-entries"] = () => Head("\"scene\": 0,", $"\"scene\": 0, \"extras\": [ 0{string.Concat(Enumerable.Repeat(",0", 4_000_000))} ],"),
        ["gltf-extension.draco"] = () => Head("\"indices\": 0 }", "\"indices\": 0, \"extensions\": { \"KHR_draco_mesh_compression\": { } } }"),
        ["gltf-extension.meshopt"] = () => Head("\"scene\": 0,", "\"scene\": 0, \"extensionsUsed\": [ \"EXT_meshopt_compression\" ],"),
        ["gltf-extension.instancing"] = () => Head("{ \"mesh\": 0 }", "{ \"mesh\": 0, \"extensions\": { \"EXT_mesh_gpu_instancing\": { } } }"),
        ["gltf-extension.required"] = () => Head("\"scene\": 0,", "\"scene\": 0, \"extensionsRequired\": [ \"KHR_materials_unlit\", \"XYZ_bent_space\" ],"),
        ["gltf-value.count"] = () => Head("\"count\": 8", "\"count\": -8"),
        ["gltf-value.count-fraction"] = () => Head("\"count\": 8", "\"count\": 8.5"),
        ["gltf-value.count-zero"] = () => Head("\"count\": 8", "\"count\": 0"),
        ["gltf-value.type"] = () => Head("\"VEC3\"", "\"VEC2\""),
        ["gltf-value.component"] = () => Head("5126", "5125"),
        ["gltf-value.position"] = () => Head("\"POSITION\"", "\"NORMAL\""),
        ["gltf-value.stride"] = () => Head("\"byteOffset\": 72,", "\"byteOffset\": 72, \"byteStride\": 4,"),
        ["gltf-value.matrix"] = () => Head("{ \"mesh\": 0 }", "{ \"mesh\": 0, \"matrix\": [ 1, 2, 3 ] }"),
        ["gltf-value.rotation"] = () => Head("{ \"mesh\": 0 }", "{ \"mesh\": 0, \"rotation\": [ 0, 0, 0, 0 ] }"),
        ["gltf-value.nodes"] = () => Head("\"nodes\": [ 0 ]", "\"nodes\": [ \"all\" ]"),
        ["gltf-value.no-view"] = () => Head("\"bufferView\": 1, ", ""),
        ["gltf-value.missing"] = () => Head("\"count\": 8, ", ""),
        ["gltf-value.list"] = () => Head("\"nodes\": [ {", "\"nodes\": 5, \"knots\": [ {"),
        ["gltf-value.half-character"] = () => Head("\"type\": \"VEC3\"", "\"\\ud800\": 0, \"type\": \"\\ud800\""),
        ["gltf-value.normalized"] = () => Head("\"VEC3\"", "\"VEC3\", \"normalized\": 1"),
        ["gltf-value.sparse-indices"] = () => Head("\"VEC3\"", "\"VEC3\", \"sparse\": { \"count\": 1 }"),
        ["gltf-value.sparse"] = () => Head("\"VEC3\"", "\"VEC3\", \"sparse\": { \"count\": 9 }"),
        ["gltf-value.uri"] = () => Head("\"byteLength\": 168 }", "\"byteLength\": 168, \"uri\": 5 }"),
        ["gltf-no-entry"] = () => Head("\"indices\": 0", "\"indices\": 7"),
        ["gltf-no-entry.none"] = () => Head("\"nodes\": [ {", "\"knots\": [ {"),
        ["gltf-scene"] = () => Head("\"scenes\"", "\"scenery\""),
        ["gltf-scene.which"] = () => Head("\"scene\": 0,\n  \"scenes\": [", "\"scenes\": [ { },"),
        ["gltf-nodes.loop"] = () => Head("{ \"mesh\": 0 }", "{ \"mesh\": 0, \"children\": [ 0 ] }"),
        ["gltf-nodes.deep"] = () => Head("{ \"mesh\": 0 }", string.Join(", ", Enumerable.Range(1, 100_000).Select(i => $"{{ \"children\": [ {i} ] }}").Take(99_999).Append("{ \"mesh\": 0 }"))),
        ["gltf-moved.skin"] = () => Head("{ \"mesh\": 0 }", "{ \"mesh\": 0, \"skin\": 0 }"),
        ["gltf-moved.morph"] = () => Head("\"indices\": 0 }", "\"indices\": 0, \"targets\": [ ] }"),
        ["gltf-no-buffer"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box)),
        ["gltf-base64"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "data:;base64,AAAA?AAA")),
        ["gltf-base64.not"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "data:text/plain,AAAA")),
        ["gltf-outside"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "../box.bin"), null, Anything),
        ["gltf-outside.hidden"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "%2e%2e%2fbox.bin"), null, Anything),
        ["gltf-outside.absolute"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "/etc/passwd"), null, Anything),
        ["gltf-outside.address"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "file:box.bin"), null, Anything),
        ["gltf-outside.backslash"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "a\\\\box.bin"), null, Anything),
        ["gltf-not-beside"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "box.bin")),
        ["gltf-buffer-short"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "box.bin"), null, _ => new byte[167]),
        ["gltf-count.bomb"] = () => Head("\"count\": 8", "\"count\": 2000000000"),
        ["gltf-count.indices"] = () => Head("\"count\": 36", "\"count\": 12000003"),
        ["gltf-range.accessor"] = () => Head("\"count\": 8", "\"count\": 9"),
        ["gltf-range.view"] = () => Head("\"byteOffset\": 72,", "\"byteOffset\": 73,"),
        ["gltf-range.sparse"] = () => Head("\"VEC3\"", "\"VEC3\", \"sparse\": { \"count\": 8, \"indices\": { \"bufferView\": 0, \"byteOffset\": 60, \"componentType\": 5123 }, \"values\": { \"bufferView\": 1 } }"),
        ["gltf-corners"] = () => Head("\"count\": 36", "\"count\": 35"),
        ["gltf-refused"] = () => Head("\"VEC3\"", "\"VEC3\", \"sparse\": { \"count\": 1, \"indices\": { \"bufferView\": 0, \"byteOffset\": 14, \"componentType\": 5125 }, \"values\": { \"bufferView\": 1 } }"),
        ["gltf-unit"] = () => Formats.Read("glb", TestMesh.Box),
        ["gltf-other-primitives"] = () => Head("\"primitives\": [", "\"primitives\": [ { \"attributes\": { \"POSITION\": 1 }, \"mode\": 0 },"),
        ["gltf-unused-meshes"] = () => Head("\"meshes\": [", "\"meshes\": [ { \"primitives\": [ ] },", "{ \"mesh\": 0 }", "{ \"mesh\": 1 }"),
        ["no-triangles.gltf"] = () => Head("\"indices\": 0 }", "\"indices\": 0, \"mode\": 1 }"),
        ["no-such-point.gltf"] = () => Head("\"count\": 8", "\"count\": 7"),
        ["not-finite.gltf"] = () => Formats.Read("glb", TestMesh.Box.Mapped(p => p.X > 0 ? p * float.NaN : p)),
        ["too-many-triangles.gltf"] = () => Head("{ \"mesh\": 0 }", "{ \"children\": [ " + string.Join(", ", Enumerable.Range(1, 99_999)) + " ] }" + string.Concat(Enumerable.Repeat(", { \"mesh\": 0 }", 99_999)), "[ { \"attributes", string.Concat("[ ", string.Concat(Enumerable.Repeat("{ \"attributes\": { \"POSITION\": 1 }, \"indices\": 0 }, ", 4)), "{ \"attributes")),
        ["too-large.gltf"] = () => Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, "box.bin"), null, _ => new byte[ScanLimits.MostBytes]),
    };

    private static Reading Head(string old, string fresh) => Reading.Of("box.glb", GltfBytes.Glb(Changed(GltfBytes.Head(TestMesh.Box), old, fresh), GltfBytes.Buffer(TestMesh.Box)));

    private static Reading Head(string old, string fresh, string secondOld, string secondFresh) =>
        Reading.Of("box.glb", GltfBytes.Glb(Changed(Changed(GltfBytes.Head(TestMesh.Box), old, fresh), secondOld, secondFresh), GltfBytes.Buffer(TestMesh.Box)));

    private static ReadOnlyMemory<byte>? Anything(string name) => GltfBytes.Buffer(TestMesh.Box);
}
