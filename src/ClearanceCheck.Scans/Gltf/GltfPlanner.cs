using System.Text.Json;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>Walks through the default scene and finds the meshes in it.</summary>
internal sealed class GltfPlanner
{
    private static readonly double[] NoMatrix = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];
    private static readonly double[] NoShift = [0, 0, 0];
    private static readonly double[] NoTurn = [0, 0, 0, 1];
    private static readonly double[] NoScale = [1, 1, 1];

    // How far a quaternion's length may be from one: what rounding to a few decimals leaves.
    private const double UnitSlack = 1e-2;

    private readonly ScanFile file;
    private readonly GltfRoot root;
    private readonly List<GltfInstance> instances = [];
    private readonly HashSet<long> seen = [];
    private readonly Stack<(long Node, int Level, AffineTransform Above)> waiting = new();

    private GltfPlanner(ScanFile file, GltfRoot root) => (this.file, this.root) = (file, root);

    /// <summary>The plan; null, and said, where there is none.</summary>
    public static GltfPlan? Plan(ScanFile file, GltfRoot root)
    {
        if (!IsVersionTwo(file, root) || !GltfExtensions.AreKnown(file, root.Value)) return null;
        return new GltfPlanner(file, root).Walk();
    }

    private static bool IsVersionTwo(ScanFile file, GltfRoot root)
    {
        string version = root.Value.TryGet("asset", out JsonElement asset) ? new GltfValue(file, asset, "asset").Text("version") ?? "" : "";
        if (version.StartsWith("2.", StringComparison.Ordinal)) return true;
        ScanMessages.GltfVersion(file, version);
        return false;
    }

    private GltfPlan? Walk()
    {
        if (SceneNodes() is not { } nodes || root.List("meshes") is not { } meshes) return null;
        Wait(nodes, 1, AffineTransform.None);
        while (waiting.TryPop(out (long Node, int Level, AffineTransform Above) next))
        {
            if (!seen.Add(next.Node) || next.Level > ScanLimits.MostLevels)
            {
                ScanMessages.GltfNodes(file, next.Node);
                return null;
            }

            if (!Visit(next.Node, next.Level, next.Above)) return null;
        }

        return new GltfPlan(instances, meshes.Length - instances.Select(i => i.Mesh).Distinct().Count());
    }

    private long[]? SceneNodes()
    {
        if (root.List("scenes") is not { } scenes) return null;
        if (scenes.Length == 0 || (scenes.Length > 1 && !root.Value.Has("scene")))
        {
            ScanMessages.GltfScene(file, scenes.Length);
            return null;
        }

        return root.Value.Index("scene", 0) is { } index ? root.Entry("scenes", index, "scene")?.Indices("nodes") : null;
    }

    private bool Visit(long index, int level, AffineTransform above)
    {
        if (root.Entry("nodes", index, "node") is not { } node || node.Indices("children") is not { } children || Place(node) is not { } own) return false;
        AffineTransform place = above.After(own);
        Wait(children, level + 1, place);
        if (!node.Has("mesh")) return true;
        if (node.Has("skin"))
        {
            ScanMessages.GltfMoved(file, "a skin");
            return false;
        }

        if (node.Index("mesh") is not { } mesh || root.Entry("meshes", mesh, "mesh") is null) return false;
        instances.Add(new GltfInstance((int)mesh, place));
        return true;
    }

    // In the order of the list, each with all below it before the next.
    private void Wait(long[] nodes, int level, AffineTransform above)
    {
        for (int i = nodes.Length - 1; i >= 0; i--) waiting.Push((nodes[i], level, above));
    }

    private static AffineTransform? Place(GltfValue node)
    {
        if (node.Has("matrix")) return node.Finite("matrix", NoMatrix) is { } matrix ? AffineTransform.FromColumns(matrix) : null;
        if (node.Finite("translation", NoShift) is not { } shift || node.Finite("rotation", NoTurn) is not { } turn || node.Finite("scale", NoScale) is not { } scale) return null;
        double size = turn.Sum(q => q * q);
        if (Math.Abs(size - 1) <= UnitSlack) return AffineTransform.FromParts(shift, turn, scale);
        node.Wrong("rotation", "four numbers whose squares add up to one");
        return null;
    }
}
