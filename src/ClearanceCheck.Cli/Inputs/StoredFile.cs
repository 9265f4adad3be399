using System.Collections.Immutable;
using System.Security.Cryptography;
using ClearanceCheck.Documents;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>A file that was read, by the name it may be called in reports: never a path of the machine.</summary>
internal sealed record StoredFile(string Name, ImmutableArray<byte> Content)
{
    /// <summary>Reads a stream, but not much more than a reader takes: what is too long is refused there with a message.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="stream">Its content.</param>
    /// <param name="mostBytes">What its reader takes: little for a text, much for a scan's mesh.</param>
    public static StoredFile Read(string name, Stream stream, long mostBytes = DocumentLimits.MostText)
    {
        using var content = new MemoryStream();
        var buffer = new byte[64 * 1024];
        while (content.Length <= mostBytes && stream.Read(buffer) is > 0 and var read) content.Write(buffer, 0, read);
        return new StoredFile(name, [.. content.ToArray()]);
    }

    /// <summary>What the provenance says of it.</summary>
    public InputFile Card() => new(Name, Content.Length, Convert.ToHexStringLower(SHA256.HashData(Content.AsSpan())));
}
