using System.Text;

namespace ClearanceCheck.Cli.Outputs;

/// <summary>Writes files so that each is whole or as it was before: first all of them under other names, then each is moved to its own.</summary>
internal static class WholeFiles
{
    /// <summary>Writes files into a folder, which is made when it is not there.</summary>
    /// <exception cref="IOException">They could not be written; nothing that existed was touched unless moving itself failed.</exception>
    /// <exception cref="UnauthorizedAccessException">As above.</exception>
    public static void Write(string folder, IReadOnlyList<(string Name, byte[] Content)> files)
    {
        Directory.CreateDirectory(folder);
        var written = new List<(string Temporary, string Final)>();
        try
        {
            foreach ((string name, byte[] content) in files)
            {
                string final = Path.Combine(folder, name);
                Directory.CreateDirectory(Path.GetDirectoryName(final)!);
                if (Directory.Exists(final)) throw new IOException($"{name} is a folder there.");
                string temporary = $"{final}.{Guid.NewGuid():N}.tmp";
                written.Add((temporary, final));
                Write(temporary, content);
            }

            foreach ((string temporary, string final) in written) File.Move(temporary, final, overwrite: true);
        }
        finally
        {
            foreach ((string temporary, _) in written) File.Delete(temporary);
        }
    }

    public static (string Name, byte[] Content) Text(string name, string content) => (name, new UTF8Encoding(false).GetBytes(content));

    private static void Write(string path, byte[] content)
    {
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        stream.Write(content);
        stream.Flush(flushToDisk: true);
    }
}
