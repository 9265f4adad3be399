namespace ClearanceCheck.Scans.Gltf;

/// <summary>What of a glTF file is read.</summary>
/// <param name="Instances">Meshes as they stand in the scene, in its order.</param>
/// <param name="UnusedMeshes">Meshes that stand nowhere in the scene.</param>
internal sealed record GltfPlan(IReadOnlyList<GltfInstance> Instances, int UnusedMeshes)
{
    /// <summary>Groups of points or lines that are left out.</summary>
    public int OtherPrimitives { get; set; }
}
