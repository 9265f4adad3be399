using System.Globalization;
using System.Numerics;
using System.Runtime.InteropServices;
using ClearanceCheck.Geometry;
using SharpGLTF.Schema2;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>Decodes the triangles of a reduced document and moves each mesh to its places.</summary>
internal static class GltfTriangles
{
    /// <summary>The name under which a reduced document asks for a buffer.</summary>
    public static string BufferName(int index) => index.ToString(CultureInfo.InvariantCulture) + ".bin";

    /// <summary>The triangles; null, and said, where there is a fault.</summary>
    public static MeshBuilder? Read(ScanFile file, GltfPlan plan, GltfReduced reduced)
    {
        var mesh = new MeshBuilder(file, reduced.Triangles);
        if (reduced.Meshes.Count == 0) return mesh;
        try
        {
            ModelRoot model = Load(reduced);
            foreach (GltfInstance instance in plan.Instances)
                if (reduced.Meshes.TryGetValue(instance.Mesh, out int place) && !Add(file, mesh, model.LogicalMeshes[place], instance)) return null;
            return mesh;
        }
        // The library refuses files by many kinds of exceptions; whatever it says, the scan can't be used.
        catch (Exception refused) when (refused is not OutOfMemoryException)
        {
            ScanMessages.GltfRefused(file, refused.Message);
            return null;
        }
    }

    private static ModelRoot Load(GltfReduced reduced)
    {
        var contents = reduced.Buffers.ToDictionary(b => BufferName(b.Key), b => MemoryMarshal.TryGetArray(b.Value, out ArraySegment<byte> array) ? array : b.Value.ToArray());
        ReadContext context = ReadContext.CreateFromDictionary(contents, false);
        context.Validation = SharpGLTF.Validation.ValidationMode.Skip;
        using var stream = new MemoryStream(reduced.Json);
        return context.ReadSchema2(stream);
    }

    private static bool Add(ScanFile file, MeshBuilder builder, Mesh mesh, GltfInstance instance)
    {
        foreach (MeshPrimitive primitive in mesh.Primitives)
        {
            IList<Vector3> points = primitive.GetVertexAccessor("POSITION").AsVector3Array();
            // Numbers that the builder gave, plus one; zero for points that no triangle has named yet.
            int[] numbers = new int[points.Count];
            string place = $"mesh {instance.Mesh}";
            // Not the library's own triangles: it drops those that name a point twice.
            IList<uint>? listed = primitive.IndexAccessor?.AsIndicesArray();
            int corners = listed?.Count ?? points.Count;
            foreach ((int i, int j, int k) in Triangles(primitive.DrawPrimitiveType, corners))
            {
                int a = Number(At(listed, i)), b = a < 0 ? -1 : Number(At(listed, j)), c = b < 0 ? -1 : Number(At(listed, k));
                if (c < 0 || !builder.Triangle(a, b, c)) return false;
            }

            int Number(uint corner) => GltfTriangles.Number(file, builder, points, numbers, corner, instance.Place, place);
        }

        return true;
    }

    private static uint At(IList<uint>? listed, int corner) => listed is null ? (uint)corner : listed[corner];

    // Which corners make the triangles.
    private static IEnumerable<(int A, int B, int C)> Triangles(PrimitiveType type, int corners)
    {
        int step = type == PrimitiveType.TRIANGLES ? 3 : 1;
        for (int i = 0; i + 2 < corners; i += step) yield return (type == PrimitiveType.TRIANGLE_FAN ? 0 : i, i + 1, i + 2);
    }

    // The builder's number of a point; -1, and said, where there is none.
    private static int Number(ScanFile file, MeshBuilder builder, IList<Vector3> points, int[] numbers, uint corner, AffineTransform place, string mesh)
    {
        if (corner >= (uint)numbers.Length)
        {
            ScanMessages.NoSuchPoint(file, mesh, corner, numbers.Length);
            return -1;
        }

        if (numbers[corner] > 0) return numbers[corner] - 1;
        Vector3 point = points[(int)corner];
        Vector3d placed = place.Apply(new Vector3d(point.X, point.Y, point.Z));
        if (!placed.IsFinite)
        {
            ScanMessages.NotFinite(file, mesh);
            return -1;
        }

        int number = builder.Point(placed);
        numbers[corner] = number + 1;
        return number;
    }
}
