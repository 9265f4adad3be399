using System.Collections.Immutable;
using System.Text.Json;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Fields of <c>findings.json</c>, each always written: an absent value is <c>null</c>.</summary>
internal static class JsonFields
{
    private const int Decimals = 6;

    /// <summary>From here on a double has no sixth decimal worth keeping, and rounding would not be stable.</summary>
    private const double LargestRounded = 1e9;

    public static void Text(Utf8JsonWriter json, string name, string? value)
    {
        if (value is null) json.WriteNull(name);
        else json.WriteString(name, value);
    }

    public static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is null) json.WriteNull(name);
        else json.WriteNumber(name, Rounded(value.Value, name));
    }

    public static void Texts(Utf8JsonWriter json, string name, ImmutableArray<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }

    public static void Each<T>(Utf8JsonWriter json, string name, ImmutableArray<T> values, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (T value in values)
        {
            json.WriteStartObject();
            write(json, value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void Point(Utf8JsonWriter json, Vector3d at, string what)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Rounded(at.X, what));
        json.WriteNumberValue(Rounded(at.Y, what));
        json.WriteNumberValue(Rounded(at.Z, what));
        json.WriteEndArray();
    }

    /// <summary>To a millionth, so that the last bits of an architecture do not reach the file; never <c>-0</c>.</summary>
    /// <exception cref="ArgumentException">The number is not finite.</exception>
    public static double Rounded(double value, string what)
    {
        if (!double.IsFinite(value)) throw new ArgumentException($"'{what}' is not a finite number: no report can be written from it.", what);
        return (Math.Abs(value) < LargestRounded ? Math.Round(value, Decimals) : value) + 0.0;
    }
}
