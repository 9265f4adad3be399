using System.Text;
using System.Text.Json;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Json;

namespace ClearanceCheck.Reporting;

/// <summary><c>findings.json</c>: everything the HTML report says, as data. Millimetres, degrees and percent; the vehicle frame.</summary>
public static class FindingsJson
{
    /// <summary>The version of the form, raised when a reader of the old one would misread the new one.</summary>
    public const int Format = 1;

    /// <summary>Writes the result; the same result gives the same bytes. Numbers are rounded to a millionth of their unit.</summary>
    /// <exception cref="ArgumentException">A number is not finite, or a pose names one coordinate twice.</exception>
    public static string Write(InspectionResult result)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
            ResultWriter.Write(json, result);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    /// <summary>Reads a result back; what <see cref="Write"/> makes of it is the text that was read.</summary>
    /// <exception cref="FormatException">The text is no <c>findings.json</c> of this format; the message names the place and what stands there.</exception>
    public static InspectionResult Read(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return ResultReader.Read(new JsonNodeReader(document.RootElement, "$"));
        }
        catch (JsonException fault)
        {
            throw new FormatException($"Line {fault.LineNumber + 1}: this is not JSON. {fault.Message}", fault);
        }
    }
}
