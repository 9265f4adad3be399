using System.Text;

namespace ClearanceCheck.Cli.Tests;

/// <summary>A working folder of its own in which commands run in process, with what they write kept.</summary>
internal sealed class Workshop : IDisposable
{
    private byte[] input = [];

    public Workshop() => Folder = Directory.CreateTempSubdirectory("clearance-check-test-").FullName;

    public string Folder { get; }

    /// <summary>The day on the wall.</summary>
    public static DateOnly Today => new(2031, 4, 2);

    /// <summary>Something that goes wrong when standard input is read.</summary>
    public Exception? BrokenInput { get; init; }

    /// <summary>A workshop with a fixture in its folder, the demo's where none is named.</summary>
    public static Workshop WithFixture(string fixture = "one-line")
    {
        var shop = new Workshop();
        foreach (string file in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "fixtures", fixture))) File.Copy(file, Path.Combine(shop.Folder, Path.GetFileName(file)));
        return shop;
    }

    public static string FixtureFolder => Path.Combine(AppContext.BaseDirectory, "fixtures", "one-line");

    public Answer Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var door = new Door(logs => logs.WriteTo.Sink(new WriterSink(error)))
        {
            Output = output,
            Error = error,
            Input = () => BrokenInput is null ? new MemoryStream(input) : throw BrokenInput,
            WorkingFolder = Folder,
            TempFolder = Folder,
            Today = Today,
        };
        return new Answer(CommandLine.Run(args, door), output.ToString(), error.ToString());
    }

    public void Type(string standardInput) => input = Encoding.UTF8.GetBytes(standardInput);

    public void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(name))!);
        File.WriteAllText(At(name), text);
    }

    public void Change(string name, string from, string to)
    {
        string text = Read(name);
        text.ShouldContain(from);
        Write(name, text.Replace(from, to, StringComparison.Ordinal));
    }

    public string Read(string name) => File.ReadAllText(At(name));

    public bool Has(string name) => File.Exists(At(name));

    public string[] Names(string folder) => Directory.Exists(At(folder)) ? [.. Directory.GetFileSystemEntries(At(folder)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)] : [];

    public string At(string name) => Path.Combine(Folder, name);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>What a command ended with and wrote.</summary>
internal sealed record Answer(int Status, string Output, string Error);
