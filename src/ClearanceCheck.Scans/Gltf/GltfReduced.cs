namespace ClearanceCheck.Scans.Gltf;

/// <summary>A glTF document that holds nothing but checked triangles.</summary>
/// <param name="Json">The document; its buffers are named by their numbers in <paramref name="Buffers"/>.</param>
/// <param name="Buffers">Their content.</param>
/// <param name="Triangles">How many there are in the whole scene.</param>
/// <param name="Meshes">For each mesh's number in the file its place in the document; meshes without triangles have none.</param>
internal sealed record GltfReduced(byte[] Json, IReadOnlyDictionary<int, ReadOnlyMemory<byte>> Buffers, IReadOnlyDictionary<int, int> Meshes, int Triangles);
