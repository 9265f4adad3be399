namespace ClearanceCheck.Scans.Gltf;

/// <summary>A mesh at its place in the scene.</summary>
/// <param name="Mesh">The mesh's number in the file.</param>
/// <param name="Place">From the mesh's coordinates to the scene's.</param>
internal sealed record GltfInstance(int Mesh, AffineTransform Place);
