using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace ClearanceCheck.Rules.Loading;

/// <summary>The fingerprint of a library: SHA-256 over each file's name and bytes, each led by its length so that no two sets run together.</summary>
internal static class LibraryHash
{
    public static string Of(IEnumerable<RuleFile> files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (RuleFile file in files)
        {
            Append(hash, Encoding.UTF8.GetBytes(file.Name));
            Append(hash, file.Content.Span);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>The fingerprint of layers, each by its name, version and hash.</summary>
    public static string Of(IEnumerable<RuleLayer> layers)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (RuleLayer layer in layers)
            foreach (string text in new[] { layer.Name, layer.Version, layer.Hash }) Append(hash, Encoding.UTF8.GetBytes(text));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Append(IncrementalHash hash, ReadOnlySpan<byte> bytes)
    {
        Span<byte> length = stackalloc byte[sizeof(long)];
        BinaryPrimitives.WriteInt64LittleEndian(length, bytes.Length);
        hash.AppendData(length);
        hash.AppendData(bytes);
    }
}
