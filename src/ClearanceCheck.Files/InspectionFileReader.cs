using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Documents.Yaml;
using ClearanceCheck.Files.Checklists;
using ClearanceCheck.Files.States;

namespace ClearanceCheck.Files;

/// <summary>Reads an inspection file into the model. Every fault of the file is found in one reading.</summary>
public static class InspectionFileReader
{
    public static InspectionReading Read(InspectionFile file)
    {
        var draft = new VehicleDraft(file);
        MappingNode? root = YamlText.Read(file.Name, file.Content.Span, draft.Diagnostics);
        if (root is not null) MappingReader.ReadFile<VehicleDraft>(root, draft.Diagnostics, reader => Read(reader, draft));
        return new InspectionReading(
            root is null || draft.Diagnostics.HasErrors ? null : draft.Build(), draft.Diagnostics, draft.Places, [.. draft.FilesBeside]);
    }

    private static VehicleDraft Read(MappingReader reader, VehicleDraft draft)
    {
        FormatKey.Check(reader);
        reader.ReadDefaultUnit();
        draft.FileWithin = reader.Optional("within").Length(LengthRange.Allowance)?.Value.Length.Millimetres;
        draft.Description = reader.Required("vehicle", "what vehicle this is").Mapping(r => DescriptionReader.Read(r, reader.Optional("datum").Text()?.Value));
        StatesReader.Read(reader, draft);
        AxlesReader.Read(reader, draft);
        ScopeReader.Read(reader, draft);
        GapsReader.FindNames(reader, draft);
        PartsReader.Read(reader, draft);
        GapsReader.Read(reader, draft);
        ChecksReader.Read(reader, draft);
        AcceptedReader.Read(reader, draft);
        BeforeLiftReader.Read(reader, draft);
        RailPitchReader.Read(reader, draft);
        RecordReader.Read(reader, draft);
        return draft;
    }
}
