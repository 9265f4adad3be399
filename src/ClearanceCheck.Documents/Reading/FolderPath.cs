using System.Diagnostics.CodeAnalysis;

namespace ClearanceCheck.Documents.Reading;

/// <summary>Paths that a file may name: below its own folder, nothing else. Text only; links are the door's to check.</summary>
public static class FolderPath
{
    /// <summary>The path with <c>.</c> and <c>..</c> resolved and forward strokes; false when it leads outside the folder or could on some system.</summary>
    public static bool TryResolve(string path, [NotNullWhen(true)] out string? resolved)
    {
        resolved = null;
        if (path.Length == 0 || path[0] is '/' or '\\' or '~') return false;
        // A colon is a drive, a stream or an address; a backslash is a folder on one system and a letter on another.
        if (path.Any(c => c is ':' or '\\' || char.IsControl(c))) return false;
        var folders = new List<string>();
        foreach (var part in path.Split('/'))
        {
            if (part is "" or ".") continue;
            if (part != "..") folders.Add(part);
            else if (folders.Count == 0) return false;
            else folders.RemoveAt(folders.Count - 1);
        }

        if (folders.Count == 0) return false;
        resolved = string.Join('/', folders);
        return true;
    }
}
