using System.Collections.Immutable;
using System.Security.Cryptography;
using ClearanceCheck.Documents;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>A file that was read, by the name it may be called in reports: never a path of the machine.</summary>
internal sealed record StoredFile(string Name, ImmutableArray<byte> Content)
{
    /// <summary>Reads a stream, but not much more than a reader takes: what is too long is refused there with a message.</summary>
    public static StoredFile Read(string name, Stream stream)
    {
        using var content = new MemoryStream();
        var buffer = new byte[64 * 1024];
        while (content.Length <= DocumentLimits.MostText && stream.Read(buffer) is > 0 and var read) content.Write(buffer, 0, read);
        return new StoredFile(name, [.. content.ToArray()]);
    }

    /// <summary>What the provenance says of it.</summary>
    public InputFile Card() => new(Name, Content.Length, Convert.ToHexStringLower(SHA256.HashData(Content.AsSpan())));
}
