using System.Text;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Scans.Stl;

/// <summary>STL as text: one or more solids of facets, each one loop of three vertices. Normals are not looked at.</summary>
internal sealed class AsciiStl
{
    private const int NormalNumbers = 3;

    private readonly ScanFile file;
    private readonly AsciiTokens tokens;
    private readonly MeshBuilder mesh;

    private AsciiStl(ScanFile file)
    {
        this.file = file;
        tokens = new AsciiTokens(file.Content, 0, 1);
        mesh = new MeshBuilder(file, 0);
    }

    public static MeshBuilder? Read(ScanFile file)
    {
        var text = new AsciiStl(file);
        return text.Solids() ? text.mesh : null;
    }

    /// <summary>Whether a word of the file is the one that is given in small letters; capitals do not count.</summary>
    public static bool IsWord(ReadOnlySpan<byte> found, ReadOnlySpan<byte> word) => Ascii.EqualsIgnoreCase(found, word);

    private bool Solids()
    {
        while (true)
        {
            ReadOnlySpan<byte> word = tokens.Next();
            if (word.IsEmpty) return true;
            if (!IsWord(word, "solid"u8)) return Wrong(word, "solid");
            tokens.SkipLine();
            if (!Facets()) return false;
            tokens.SkipLine();
        }
    }

    private bool Facets()
    {
        while (true)
        {
            ReadOnlySpan<byte> word = tokens.Next();
            if (IsWord(word, "endsolid"u8)) return true;
            if (!IsWord(word, "facet"u8)) return Wrong(word, "facet or endsolid");
            if (!Facet()) return false;
        }
    }

    private bool Facet()
    {
        if (!Due("normal"u8, "normal")) return false;
        for (int i = 0; i < NormalNumbers; i++) tokens.Next();
        if (!Due("outer"u8, "outer loop") || !Due("loop"u8, "outer loop")) return false;
        if (!Vertex(out Vector3d a) || !Vertex(out Vector3d b) || !Vertex(out Vector3d c)) return false;
        return Due("endloop"u8, "endloop") && Due("endfacet"u8, "endfacet") && mesh.Triangle(a, b, c);
    }

    private bool Vertex(out Vector3d vertex)
    {
        vertex = default;
        if (!Due("vertex"u8, "vertex") || !Number(out double x) || !Number(out double y) || !Number(out double z)) return false;
        vertex = new Vector3d(x, y, z);
        if (vertex.IsFinite) return true;
        ScanMessages.NotFinite(file, $"line {tokens.Line}");
        return false;
    }

    private bool Number(out double value)
    {
        ReadOnlySpan<byte> word = tokens.Next();
        if (AsciiTokens.TryNumber(word, out value)) return true;
        if (word.IsEmpty) ScanMessages.StlTextEnds(file, tokens.Line, "a number");
        else ScanMessages.TextNumber(file, tokens.Line, AsciiTokens.Shown(word));
        return false;
    }

    private bool Due(ReadOnlySpan<byte> word, string wanted)
    {
        ReadOnlySpan<byte> found = tokens.Next();
        return IsWord(found, word) || Wrong(found, wanted);
    }

    private bool Wrong(ReadOnlySpan<byte> found, string wanted)
    {
        if (found.IsEmpty) ScanMessages.StlTextEnds(file, tokens.Line, wanted);
        else ScanMessages.StlWord(file, tokens.Line, AsciiTokens.Shown(found), wanted);
        return false;
    }
}
