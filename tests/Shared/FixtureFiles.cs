namespace ClearanceCheck.Tests.Shared;

/// <summary>The inspections under <c>fixtures/</c>, copied beside the test program.</summary>
internal static class FixtureFiles
{
    public static string Folder(string fixture) => Path.Combine(AppContext.BaseDirectory, "fixtures", fixture);

    public static ReadOnlyMemory<byte> Bytes(string fixture, string file) => File.ReadAllBytes(Path.Combine(Folder(fixture), file));

    public static ReadOnlyMemory<byte>? Beside(string fixture, string file)
    {
        string path = Path.Combine(Folder(fixture), file);
        if (!File.Exists(path)) return null;
        return File.ReadAllBytes(path);
    }
}
