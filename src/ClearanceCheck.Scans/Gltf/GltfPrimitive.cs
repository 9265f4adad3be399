namespace ClearanceCheck.Scans.Gltf;

/// <summary>A group of triangles of a mesh.</summary>
/// <param name="Mode">4 triangles, 5 a strip, 6 a fan.</param>
/// <param name="Points">The accessor of its points.</param>
/// <param name="Indices">The accessor of its corners; null where the points are the corners.</param>
/// <param name="Corners">How many corners are listed.</param>
internal sealed record GltfPrimitive(long Mode, long Points, long? Indices, long Corners);
