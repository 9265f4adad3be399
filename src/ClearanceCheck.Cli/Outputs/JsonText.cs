using System.Text;
using System.Text.Json;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Cli.Outputs;

/// <summary>Machine output: indented, lines end with LF, numbers rounded to a billionth and finite.</summary>
internal static class JsonText
{
    private const int Decimals = 9;

    /// <summary>From here on a double has no ninth decimal worth keeping.</summary>
    private const double LargestRounded = 1e6;

    public static string Write(Action<Utf8JsonWriter> write)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" })) write(json);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    public static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number) json.WriteNumber(name, Rounded(number));
        else json.WriteNull(name);
    }

    public static void Text(Utf8JsonWriter json, string name, string? value)
    {
        if (value is null) json.WriteNull(name);
        else json.WriteString(name, value);
    }

    public static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }

    public static void Numbers(Utf8JsonWriter json, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray();
        foreach (double value in values) json.WriteNumberValue(Rounded(value));
        json.WriteEndArray();
    }

    public static void Point(Utf8JsonWriter json, Vector3d at) => Numbers(json, at.X, at.Y, at.Z);

    /// <summary>Rounded, never <c>-0</c>.</summary>
    /// <exception cref="ArgumentException">The number is not finite.</exception>
    public static double Rounded(double value)
    {
        if (!double.IsFinite(value)) throw new ArgumentException("A number that is not finite can't be written.", nameof(value));
        return (Math.Abs(value) < LargestRounded ? Math.Round(value, Decimals) : value) + 0.0;
    }
}
