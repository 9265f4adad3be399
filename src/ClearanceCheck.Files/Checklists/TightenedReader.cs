using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files.Checklists;

/// <summary>Reads <c>tightened</c>: by axle for all its bushed pivots, or by axle and point for one.</summary>
internal static class TightenedReader
{
    private const string RideHeight = "ride-height";

    private static readonly string[] Where = [RideHeight, "hanging"];

    public static ImmutableArray<Tightening> Read(Field field, VehicleDraft draft)
    {
        var all = ImmutableArray.CreateBuilder<Tightening>();
        var words = new SortedDictionary<string, (Axle Axle, ImmutableArray<string> Pivots)>(StringComparer.Ordinal);
        foreach (Axle axle in draft.Axles)
        {
            ImmutableArray<string> pivots = [.. BushedPivots.Of(axle).Select(p => p.Name)];
            words[axle.Name] = (axle, pivots);
            foreach (string pivot in pivots) words[$"{axle.Name}-{pivot}"] = (axle, [pivot]);
        }

        foreach ((Placed<string> key, Field value) in field.Entries() ?? [])
        {
            bool isKnown = words.TryGetValue(key.Value, out (Axle Axle, ImmutableArray<string> Pivots) about);
            if (!isKnown && draft.FaultyAxles.Count == 0) FileMessages.NoSuchPivot(draft.Diagnostics, key, words.Keys);
            if (value.Mapping(r => Read(r, isKnown ? about : (null, []))) is { } read) all.Add(read);
        }

        return all.ToImmutable();
    }

    private static Tightening? Read(MappingReader reader, (Axle? Axle, ImmutableArray<string> Pivots) about)
    {
        Placed<string>? at = reader.Required("at", "how the vehicle stood: " + string.Join(", ", Where)).Word(Where);
        string? by = reader.Required("by", "who tightened it: initials or name").Text()?.Value, mark = reader.Optional("mark").Text()?.Value;
        Field except = reader.Optional("except");
        IReadOnlyList<Placed<string>> open = about.Pivots.IsEmpty ? [] : except.Words([.. about.Pivots])?.Value ?? [];
        if (at is null || by is null || about.Axle is null) return null;
        return new Tightening(about.Axle.Name, [.. about.Pivots.Except(open.Select(o => o.Value))], at.Value == RideHeight, by, mark);
    }
}
