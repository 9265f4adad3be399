namespace ClearanceCheck.Scans;

/// <summary>Messages about glTF.</summary>
internal static partial class ScanMessages
{
    private const string ExportPlain = "Export plain glTF 2.0 without compression or animation, or binary STL.";

    public static void GltfStart(ScanFile file) => file.Error(
        "scan.gltf-start", $"`{file.Name}` starts neither with the letters `glTF` nor with a brace, so it is no glTF file.", "Name the file by its real format, or export it again.");

    public static void GltfLength(ScanFile file, long? claimed) => file.Error(
        "scan.gltf-length",
        claimed is { } length ? $"`{file.Name}` claims {length} bytes at byte 8, but it is {file.Length} bytes long." : $"`{file.Name}` ends after {file.Length} bytes, within its head.",
        ExportAgain);

    public static void GltfVersion(ScanFile file, string version) => file.Error(
        "scan.gltf-version", version.Length > 0 ? $"`{file.Name}` is of version `{Cut(version)}` of glTF; version 2 is read." : $"`{file.Name}` does not say its version of glTF.", ExportPlain);

    public static void GltfChunk(ScanFile file, int at) => file.Error(
        "scan.gltf-chunk", $"The chunk at byte {at} of `{file.Name}` is not the one that is due there, or is longer than the file.", ExportAgain);

    public static void GltfJson(ScanFile file, long line, long at) => file.Error(
        "scan.gltf-json", $"The JSON of `{file.Name}` has a fault in its line {line} at byte {at}.", ExportAgain);

    public static void GltfTooManyEntries(ScanFile file) => file.Error(
        "scan.gltf-too-many-entries", $"The JSON of `{file.Name}` has millions of entries; a scan's has a few hundred.", "Export the points into a buffer, not into the JSON.");

    public static void GltfExtension(ScanFile file, string name) => file.Error(
        "scan.gltf-extension", $"`{file.Name}` needs the extension `{Cut(name)}`, which is not read: triangles would be missing or misplaced.", ExportPlain);

    public static void GltfValue(ScanFile file, string key, string place, string? found, string due) => file.Error(
        "scan.gltf-value", $"`{key}` of {place} of `{file.Name}` is {(found is null ? "missing" : $"`{Cut(found)}`")}; due is {due}.", ExportAgain);

    public static void GltfNoEntry(ScanFile file, string noun, long index, int length) => file.Error(
        "scan.gltf-no-entry", $"`{file.Name}` names {noun} {index}, but {(length == 0 ? "there is none" : $"they are 0 to {length - 1}")}.", ExportAgain);

    public static void GltfScene(ScanFile file, int scenes) => file.Error(
        "scan.gltf-scene",
        scenes == 0 ? $"`{file.Name}` has no scene." : $"`{file.Name}` has {scenes} scenes and does not say which one counts.",
        "Export one scene that holds the whole scan.");

    public static void GltfNodes(ScanFile file, long node) => file.Error(
        "scan.gltf-nodes", $"Node {node} of `{file.Name}` stands in the scene twice, or below more than {ScanLimits.MostLevels} others.", ExportAgain);

    public static void GltfMoved(ScanFile file, string what) => file.Error(
        "scan.gltf-moved", $"A mesh of `{file.Name}` is moved by {what}, so where its triangles are depends on more than the file's points.", ExportPlain);

    public static void GltfNoBuffer(ScanFile file, long buffer) => file.Error(
        "scan.gltf-no-buffer", $"Buffer {buffer} of `{file.Name}` says no file, and is not in the file itself.", ExportAgain);

    public static void GltfBase64(ScanFile file, string place) => file.Error(
        "scan.gltf-base64", $"The bytes of {place} of `{file.Name}` are not whole base64.", ExportAgain);

    public static void GltfOutside(ScanFile file, long buffer, string name) => file.Error(
        "scan.gltf-outside", $"Buffer {buffer} of `{file.Name}` is `{Cut(name)}`: only a file in the same folder is read.", "Put the buffer beside the scan, or export one .glb.");

    public static void GltfNotBeside(ScanFile file, long buffer, string name) => file.Error(
        "scan.gltf-not-beside", $"Buffer {buffer} of `{file.Name}` is the file `{Cut(name)}`, which is not in its folder.", "Put the buffer beside the scan, or export one .glb.");

    public static void GltfBufferShort(ScanFile file, long buffer, long claimed, long length) => file.Error(
        "scan.gltf-buffer-short", $"Buffer {buffer} of `{file.Name}` must be {claimed} bytes long, but it is {length}.", ExportAgain);

    public static void GltfCount(ScanFile file, string place, long claimed, long most) => file.Error(
        "scan.gltf-count", $"{Sentence(place)} of `{file.Name}` claims {claimed} entries; {most} are read at most.", "Thin the mesh out, or cut away what is far from every moving part.");

    public static void GltfRange(ScanFile file, string place, long count, long needed, string holder, long length) => file.Error(
        "scan.gltf-range",
        $"{Sentence(place)} of `{file.Name}` needs {needed} bytes{(count > 1 ? $" for its {count} entries" : "")}, but {holder} is {length} bytes long.",
        ExportAgain);

    public static void GltfCorners(ScanFile file, string place, long corners) => file.Error(
        "scan.gltf-corners", $"{Sentence(place)} of `{file.Name}` has {corners} corners, which do not make whole triangles.", ExportAgain);

    public static void GltfRefused(ScanFile file, string reason) => file.Error(
        "scan.gltf-refused", $"`{file.Name}` can't be read as glTF: {Cut(reason)}", ExportPlain);

    public static void GltfUnit(ScanFile file) => file.Note(
        "scan.gltf-unit",
        $"glTF is in metres by its standard, but `{file.Name}` is read in {UnitWord(file.Claims.Unit)}, as typed.",
        "Type m when the scanning program keeps to the standard.");

    public static void GltfOtherPrimitives(ScanFile file, int groups) => file.Note(
        "scan.gltf-other-primitives", $"Groups of points or lines of `{file.Name}` that are left out, because they have no surface: {groups}.", "Look at the scan if something is missing.");

    public static void GltfUnusedMeshes(ScanFile file, int meshes) => file.Note(
        "scan.gltf-unused-meshes", $"Meshes of `{file.Name}` that are left out, because they do not stand in its scene: {meshes}.", "Export one scene that holds the whole scan.");

    public static string Whole(uint value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Cut(string text) => text.Length <= MostShown ? text : text[..MostShown] + "...";

    private const int MostShown = 120;
}
