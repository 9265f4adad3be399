using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Json;

/// <summary>Reads the whole result back.</summary>
internal static class ResultReader
{
    public static InspectionResult Read(JsonNodeReader root)
    {
        if (root["format"].Whole != FindingsJson.Format) throw root["format"].Wrong($"format {FindingsJson.Format}");
        return new InspectionResult
        {
            Decision = new DecisionCard(
                root["decision"].Word<DecisionKind>(MachineWords.Of),
                root["reasons"].Texts,
                [.. root["doThis"].Items.Select(line => new ActionLine(line["text"].Text, line["finding"].TextOrNull))]),
            Vehicle = ReadVehicle(root["vehicle"]),
            Scope = root["scope"].Texts,
            Library = LibraryJson.Read(root["library"]),
            Findings = [.. root["findings"].Items.Select(FindingReader.Read)],
            Record = RecordReader.Read(root["record"]),
            NotInspected = [.. root["notInspected"].Items.Select(i => new NotInspectedItem(i["what"].Text, i["why"].Text))],
            MatchedNothing = [.. root["matchedNothing"].Items.Select(r => new UnmatchedRule(r["rule"].Text, r["title"].Text, r["reason"].Text))],
            Exempt = [.. root["exempt"].Items.Select(z => new ExemptZone(z["parts"].Texts, z["around"].Text, z["radius"].NumberOrNull, z["why"].Text))],
            Assumptions = [.. root["assumptions"].Items.Select(a => new Assumption(a["path"].Text, a["text"].Text))],
            Reach = [.. root["reach"].Items.Select(ReadReach)],
            Travel = [.. root["travel"].Items.Select(TravelReader.Read)],
            Measurements = [.. root["measurements"].Items.Select(ReadMeasurement)],
            Provenance = ReadProvenance(root["provenance"]),
        };
    }

    private static VehicleCard ReadVehicle(JsonNodeReader vehicle) => new()
    {
        Name = vehicle["name"].Text,
        Job = vehicle["job"].TextOrNull,
        Lift = vehicle["lift"].TextOrNull,
        Date = vehicle["date"].TextOrNull,
        Inspector = vehicle["inspector"].TextOrNull,
        Odometer = vehicle["odometer"].TextOrNull,
        Drive = vehicle["drive"].TextOrNull,
        Load = vehicle["load"].TextOrNull,
        Fuel = vehicle["fuel"].TextOrNull,
        Datum = vehicle["datum"].TextOrNull,
    };

    private static ReachCard ReadReach(JsonNodeReader reach) => new(
        reach["coordinate"].Text, reach["label"].Text, reach["unit"].Text,
        reach["lowest"].Number, reach["highest"].Number, reach["endsLowest"].Text, reach["endsHighest"].Text);

    private static MeasurementRow ReadMeasurement(JsonNodeReader row) => new(
        row["path"].Text, row["typed"].Text, row["point"].IsNull ? null : row["point"].Point,
        row["value"].NumberOrNull, row["within"].Number, row["withinAssumed"].YesNo);

    private static Provenance ReadProvenance(JsonNodeReader provenance) => new()
    {
        ReportId = provenance["reportId"].Text,
        ProgramVersion = provenance["programVersion"].Text,
        Inputs = [.. provenance["inputs"].Items.Select(i => new InputFile(i["name"].Text, i["bytes"].Whole, i["sha256"].Text))],
        Settings = [.. provenance["settings"].Items.Select(s => new Setting(s["name"].Text, s["value"].Text))],
        Cells = provenance["cells"].Whole,
        Solves = provenance["solves"].Whole,
        PairsAsked = (int)provenance["pairsAsked"].Whole,
        PairsRefusedAtRoot = (int)provenance["pairsRefusedAtRoot"].Whole,
    };
}
