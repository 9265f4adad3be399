using System.Text;

namespace ClearanceCheck.Files.Tests;

/// <summary>The inspection with every form in it, with some of its text exchanged.</summary>
internal static class EveryForm
{
    /// <summary>A box of 20 x 40 x 30 of its own units around its zero, as a text mesh of twelve triangles.</summary>
    public static string BoxMesh { get; } = Mesh(20, 40, 30);

    public static InspectionReading Read(params (string Old, string New)[] changes)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Inspections", "every-form.yaml")).ReplaceLineEndings("\n");
        foreach ((string old, string fresh) in changes)
        {
            text.ShouldContain(old);
            text = text.Replace(old, fresh, StringComparison.Ordinal);
        }

        return InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), Beside));
    }

    private static ReadOnlyMemory<byte>? Beside(string path)
    {
        if (path != "scans/gearbox.stl") return null;
        return Encoding.ASCII.GetBytes(BoxMesh);
    }

    private static string Mesh(int x, int y, int z)
    {
        // Corners by bits; two triangles a face.
        int[] faces = [0, 1, 3, 0, 3, 2, 4, 6, 7, 4, 7, 5, 0, 4, 5, 0, 5, 1, 2, 3, 7, 2, 7, 6, 0, 2, 6, 0, 6, 4, 1, 5, 7, 1, 7, 3];
        var text = new StringBuilder("solid box\n");
        for (int i = 0; i < faces.Length; i++)
        {
            if (i % 3 == 0) text.Append("facet normal 0 0 0\nouter loop\n");
            (int bx, int by, int bz) = (faces[i] & 1, (faces[i] >> 1) & 1, faces[i] >> 2);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"vertex {(bx - 0.5) * x} {(by - 0.5) * y} {(bz - 0.5) * z}\n");
            if (i % 3 == 2) text.Append("endloop\nendfacet\n");
        }

        return text.Append("endsolid box\n").ToString();
    }
}
