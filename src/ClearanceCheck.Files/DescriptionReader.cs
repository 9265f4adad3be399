using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files;

/// <summary>What the inspector wrote about the vehicle.</summary>
internal static class DescriptionReader
{
    public static VehicleDescription? Read(MappingReader reader, string? datum)
    {
        string? name = reader.Required("name", "what the vehicle is called").Text()?.Value;
        string? date = reader.Optional("date").Date()?.Node is { } node ? node.Span.Text.Trim('"', '\'') : null;
        return name is null ? null : new VehicleDescription
        {
            Name = name,
            Job = Text(reader, "job"),
            Lift = Text(reader, "lift"),
            Date = date,
            Inspector = Text(reader, "inspector"),
            Odometer = Text(reader, "odometer"),
            Drive = reader.Optional("drive").Word(DriveWords.All)?.Value,
            Load = Text(reader, "load"),
            Fuel = Text(reader, "fuel"),
            Datum = datum,
        };
    }

    private static string? Text(MappingReader reader, string key) => reader.Optional(key).Text()?.Value;
}
