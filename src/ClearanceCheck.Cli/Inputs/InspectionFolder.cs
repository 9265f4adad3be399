using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files;
using ClearanceCheck.Scans;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>The inspection file and the files beside it: nothing outside its folder is read, through no link either.</summary>
internal sealed class InspectionFolder(StoredFile main, string folder, Door door)
{
    private readonly SortedDictionary<string, StoredFile?> beside = new(StringComparer.Ordinal);

    /// <summary>How standard input is called in messages and reports.</summary>
    public const string StandardInput = "standard-input";

    /// <summary>Opens what was typed as FILE: a path, or <c>-</c> for standard input, whose files beside lie in the working folder.</summary>
    public static (InspectionFolder? Folder, InputFault? Fault) Open(string file, Door door)
    {
        try
        {
            if (file == "-")
            {
                using Stream input = door.Input();
                return (new InspectionFolder(StoredFile.Read(StandardInput, input), door.WorkingFolder, door), null);
            }

            string path = door.Resolve(file);
            if (Directory.Exists(path)) return (null, new InputFault($"{file} is a folder.", "Name the inspection file in it."));
            if (!File.Exists(path)) return (null, new InputFault($"There is no file {file}.", "Check the spelling, or run `clearance-check demo` to see an example."));
            using FileStream stream = File.OpenRead(path);
            return (new InspectionFolder(StoredFile.Read(Path.GetFileName(path), stream), Path.GetDirectoryName(path)!, door), null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, new InputFault($"{file} can't be read: {e.Message}", ""));
        }
    }

    /// <summary>The file for the reader.</summary>
    public InspectionFile ForReader() => new(main.Name, main.Content.AsMemory(), path => Beside(path)?.Content.AsMemory());

    /// <summary>The inspection file and the files beside it that were read, in this order.</summary>
    public IEnumerable<StoredFile> Read(IEnumerable<string> filesBeside) => [main, .. filesBeside.Select(Beside).OfType<StoredFile>()];

    private StoredFile? Beside(string path)
    {
        if (!beside.TryGetValue(path, out StoredFile? found)) beside[path] = found = Fetch(path);
        return found;
    }

    private StoredFile? Fetch(string path)
    {
        if (!FolderPath.TryResolve(path, out string? resolved)) return null;
        string whole = Path.GetFullPath(resolved, folder);
        try
        {
            if (!File.Exists(whole)) return null;
            if (!RealPath.IsBelow(RealPath.Of(whole), RealPath.Of(Path.GetFullPath(folder))))
            {
                door.Log.Warning("{File} is a link that leads out of the folder of the inspection file; such a file is not read", resolved);
                return null;
            }

            using FileStream stream = File.OpenRead(whole);
            return StoredFile.Read(resolved, stream, ScanLimits.MostBytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            door.Log.Warning("{File} can't be read: {Reason}", resolved, e.Message);
            return null;
        }
    }
}
