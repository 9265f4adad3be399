using System.Collections.Immutable;
using System.Text.Json;
using ClearanceCheck.Cli.Outputs;
using ClearanceCheck.Cli.Poses;
using ClearanceCheck.Quantities;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>Measurements as machine output; their schema is <c>measure</c>.</summary>
internal static class MeasureJson
{
    private const int Format = 1;

    /// <summary>One measurement.</summary>
    /// <param name="solves">Poses solved for it.</param>
    public static string One(Quantity quantity, MeasuredSubject measured, long solves) => JsonText.Write(json =>
    {
        Head(json, quantity);
        Subject(json, measured);
        json.WriteNumber("solves", solves);
        json.WriteEndObject();
    });

    /// <summary>The worst of all.</summary>
    public static string Closest(Quantity quantity, ImmutableArray<MeasuredSubject> measured, long solves) => JsonText.Write(json =>
    {
        Head(json, quantity);
        json.WriteStartArray("closest");
        foreach (MeasuredSubject subject in measured)
        {
            json.WriteStartObject();
            Subject(json, subject);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("solves", solves);
        json.WriteEndObject();
    });

    private static void Head(Utf8JsonWriter json, Quantity quantity)
    {
        json.WriteStartObject();
        json.WriteNumber("format", Format);
        json.WriteString("quantity", quantity.Id);
        json.WriteString("unit", QuantityUnitText.Of(quantity.Unit));
    }

    private static void Subject(Utf8JsonWriter json, MeasuredSubject measured)
    {
        Measurement? worst = measured.Value is null ? null : measured.Worst;
        JsonText.Texts(json, "parts", measured.PartIds);
        json.WriteString("answer", measured.Answer);
        JsonText.Text(json, "notEvaluated", measured.NotEvaluated);
        JsonText.Number(json, "value", measured.Value);
        JsonText.Number(json, "bound", worst?.Bound);
        JsonText.Text(json, "boundKind", worst is null ? null : MachineWords.Of(worst.Grade));
        json.WriteStartObject("pose");
        foreach (ShownCoordinate at in measured.Pose) JsonText.Number(json, at.Name, at.Value);
        json.WriteEndObject();
        JsonText.Texts(json, "stops", measured.Stops);
        Witness(json, worst);
        JsonText.Number(json, "standardUncertainty", worst?.Places[0].StandardUncertainty);
        JsonText.Number(json, "giveOrTake", worst is null ? null : GiveOrTake.Of(worst));
        json.WriteNumber("cells", measured.Worst?.Cells ?? 0);
    }

    private static void Witness(Utf8JsonWriter json, Measurement? worst)
    {
        json.WritePropertyName("witness");
        if (worst is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartArray();
        JsonText.Point(json, worst.Places[0].First);
        JsonText.Point(json, worst.Places[0].Second);
        json.WriteEndArray();
    }
}
