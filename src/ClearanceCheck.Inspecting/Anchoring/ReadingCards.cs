using System.Collections.Immutable;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Units;

namespace ClearanceCheck.Inspecting.Anchoring;

/// <summary>Gaps that were read directly, in words: what each is beside the model, and which one counts.</summary>
internal static class ReadingCards
{
    private const string Ride = "ride";

    public static ImmutableArray<DirectCard> Of(Measurement measured, double coverageFactor) =>
        [.. measured.Readings.Select(r => new DirectCard(
            r.Id, r.State, r.MeasuredMm, coverageFactor * r.StandardUncertaintyMm, r.ComputedMm, r.TravelMm, r.Counts, r.Disagrees, Sentence(measured, r)))];

    public static FindingBasis Basis(MeasurementBasis basis) => basis switch
    {
        MeasurementBasis.Points => FindingBasis.Points,
        MeasurementBasis.Reading => FindingBasis.Reading,
        MeasurementBasis.ReadingAndTravel => FindingBasis.ReadingAndTravel,
        _ => throw new ArgumentOutOfRangeException(nameof(basis)),
    };

    /// <summary>"205 mm hanging".</summary>
    public static string Read(DirectReading reading) =>
        $"{Mm(reading.MeasuredMm)} {(reading.State == Ride ? "at ride height" : reading.State.Replace('-', ' '))}";

    /// <summary>"read 205 mm hanging where the points make it 183 mm (22 mm apart): read both again".</summary>
    public static string Contradiction(DirectReading reading) =>
        $"read {Read(reading)} where the points make it {Mm(reading.ComputedMm!.Value)} ({Mm(Math.Abs(reading.DeltaMm!.Value))} apart): read both again";

    /// <summary>To a tenth of a millimetre.</summary>
    public static string Mm(double mm) => NumberFormat.UpTo(mm, 1) + " mm";

    private static string Sentence(Measurement measured, DirectReading reading)
    {
        if (reading.NotUsed is { } why) return $"Read {Read(reading)}; not used: {why}.";
        if (reading.Disagrees) return Capital(Contradiction(reading)) + (reading.IsOfParts ? "; until then the smaller value counts." : ".");
        if (reading.TravelMm is { } travel) return Travelled(reading, travel);
        if (reading.Counts) return $"Measured {Read(reading)}, {Closer(reading.MeasuredMm - measured.Value)}; the points make it {Mm(reading.ComputedMm!.Value)} there.";
        return reading.IsOfParts
            ? $"Measured {Read(reading)}; the points make it {Mm(reading.ComputedMm!.Value)} there."
            : $"Nothing on the body is nearer than {Read(reading)}; the points make it {Mm(reading.ComputedMm!.Value)} to this part.";
    }

    private static string Travelled(DirectReading reading, double travel)
    {
        string read = reading.IsOfParts ? $"Measured {Read(reading)}" : $"Nothing on the body is nearer than {Read(reading)}";
        return travel > 0 ? $"{read}, and the two can't move more than {Mm(Math.Ceiling(10 * travel) / 10)} against each other." : $"{read}; the two never move against each other.";
    }

    private static string Closer(double mm) => mm switch
    {
        >= 0.05 => $"and {Mm(mm)} closer at its worst",
        > -0.05 => "and no closer at its worst",
        _ => $"and {Mm(-mm)} wider even at its worst",
    };

    private static string Capital(string sentence) => char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
