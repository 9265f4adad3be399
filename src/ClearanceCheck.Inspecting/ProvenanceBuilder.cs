using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using ClearanceCheck.Inspecting.Planning;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Inspecting;

/// <summary>What a result was made from, and the id that stands on every printed page.</summary>
internal static class ProvenanceBuilder
{
    private const int IdCharacters = 12;

    public static Provenance Build(InspectionRequest request, VehicleMotion motion, IReadOnlyCollection<Measurement> measurements, int uncovered)
    {
        var defaults = new SweepSettings();
        ImmutableArray<Setting> settings =
        [
            .. request.Today is { } today ? [new Setting("day of the inspection", Day(today))] : ImmutableArray<Setting>.Empty,
            new("give or take", $"{NumberText.Short(request.CoverageFactor)} standard uncertainties"),
            new("guard over the largest limit", $"at least {NumberText.Short(Ceilings.LeastGuardMm)} mm"),
            new("stop give", $"{NumberText.Short(defaults.StopGiveMm)} mm"),
            new("pairs looked at that no rule of their own covers", uncovered.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            new("search tolerance", "a fifth of the parts' uncertainty, 0.1 to 1 mm"),
        ];
        return new Provenance
        {
            ProgramVersion = request.ProgramVersion,
            Inputs = request.Inputs,
            Settings = settings,
            Cells = measurements.Sum(m => (long)m.Cells),
            Solves = motion.Modules.Sum(m => m.Motion.Solves),
            PairsAsked = measurements.Count,
            PairsRefusedAtRoot = measurements.Count(m => m.RefusedAtRoot),
            ReportId = Id(request),
        };
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static string Id(InspectionRequest request)
    {
        var text = new StringBuilder(request.ProgramVersion).Append('\n').Append(request.Library.Hash).Append('\n');
        if (request.Today is { } today) text.Append(Day(today)).Append('\n');
        foreach (InputFile input in request.Inputs) text.Append(input.Name).Append(' ').Append(input.Sha256).Append('\n');
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString()));
        return Convert.ToHexStringLower(hash)[..IdCharacters];
    }
}
