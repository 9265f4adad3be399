namespace ClearanceCheck.Rules.Tests.Hazards;

/// <summary>What is wrong between a table of hazards and a library.</summary>
internal static class HazardFaults
{
    public static IEnumerable<string> Of(IReadOnlyList<HazardRow> table, RuleLibrary library)
    {
        HashSet<string> known = [.. library.Rules.Select(r => r.Id), .. library.Items.Select(i => i.Id), .. library.Coverage.Select(c => c.Expectation.Id)];
        foreach (HazardRow row in table)
        {
            if (row is { ServedBy.IsEmpty: true, Waits: null, Also: null }) yield return $"{row.Family}, {row.Check}: nothing serves it and nothing says why";
            foreach (string id in row.ServedBy.Where(id => !known.Contains(id))) yield return $"{row.Family}, {row.Check}: {id} is not in the library";
        }

        HashSet<string> named = [.. table.SelectMany(r => r.ServedBy)];
        foreach (string id in known.Where(id => !named.Contains(id)).Order(StringComparer.Ordinal)) yield return $"{id} serves no hazard of the table";
    }
}
