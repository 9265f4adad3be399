using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans.Gltf;

/// <summary>An object of the JSON head with the words for its place. Every reading is null, and said, where the value is none.</summary>
internal readonly record struct GltfValue(ScanFile File, JsonElement Json, string Place)
{
    /// <summary>What a whole number in a double can be.</summary>
    public const long MostWhole = 1L << 53;

    /// <summary>Whether the object has a key; false for what is no object.</summary>
    public bool Has(string key) => TryGet(key, out _);

    public bool TryGet(string key, out JsonElement value)
    {
        value = default;
        return Json.ValueKind == JsonValueKind.Object && Json.TryGetProperty(key, out value);
    }

    /// <summary>A whole number within a range.</summary>
    public long? Whole(string key, long least, long most, long? absent = null)
    {
        if (!TryGet(key, out JsonElement value) && absent is not null) return absent;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out double number) && number >= least && number <= most && number == Math.Floor(number)) return (long)number;
        return Wrong(key, most < MostWhole ? $"a whole number from {Text(least)} to {Text(most)}" : $"a whole number of {Text(least)} or more");
    }

    /// <summary>The number of an entry in one of the file's lists.</summary>
    public long? Index(string key, long? absent = null) => Whole(key, 0, ScanLimits.MostEntries, absent);

    /// <summary>The entries of a list; none where there is no such key.</summary>
    public JsonElement[]? List(string key)
    {
        if (!TryGet(key, out JsonElement value)) return [];
        if (value.ValueKind == JsonValueKind.Array && value.GetArrayLength() <= ScanLimits.MostEntries) return [.. value.EnumerateArray()];
        Wrong(key, $"a list of {ScanLimits.MostEntries} entries at most");
        return null;
    }

    /// <summary>Numbers of entries that an object names in a list.</summary>
    public long[]? Indices(string key)
    {
        if (List(key) is not { } entries) return null;
        long[] numbers = new long[entries.Length];
        for (int i = 0; i < numbers.Length; i++)
        {
            if (entries[i].ValueKind == JsonValueKind.Number && entries[i].TryGetInt64(out numbers[i]) && numbers[i] >= 0) continue;
            Wrong(key, "a list of whole numbers of zero or more");
            return null;
        }

        return numbers;
    }

    /// <summary>A list of so many finite numbers; the absent ones where there is no such key.</summary>
    public double[]? Finite(string key, double[] absent)
    {
        if (!TryGet(key, out JsonElement list)) return absent;
        double[] numbers = new double[absent.Length];
        bool sound = list.ValueKind == JsonValueKind.Array && list.GetArrayLength() == absent.Length;
        for (int i = 0; sound && i < numbers.Length; i++)
            sound = list[i].ValueKind == JsonValueKind.Number && list[i].TryGetDouble(out numbers[i]) && double.IsFinite(numbers[i]);
        if (sound) return numbers;
        Wrong(key, $"a list of {numbers.Length} finite numbers");
        return null;
    }

    /// <summary>A text, or null without a word.</summary>
    public string? Text(string key) => TryGet(key, out JsonElement value) && value.ValueKind == JsonValueKind.String ? TextOf(value) : null;

    /// <summary>Texts of a list; others in it do not count.</summary>
    public IEnumerable<string> Texts(string key) =>
        TryGet(key, out JsonElement list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray().Where(e => e.ValueKind == JsonValueKind.String).Select(TextOf) : [];

    /// <summary>Says what a value is and what it must be.</summary>
    public long? Wrong(string key, string due)
    {
        ScanMessages.GltfValue(File, key, Place, TryGet(key, out JsonElement value) ? Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8Value(value)) : null, due);
        return null;
    }

    // A text may hold halves of characters, which no string can be made of.
    private static string TextOf(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            return "\uFFFD";
        }
    }

    private static string Text(long number) => NumberFormat.Fixed(number, 0);
}
