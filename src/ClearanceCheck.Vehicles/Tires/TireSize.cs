using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace ClearanceCheck.Vehicles.Tires;

/// <summary>A tire's size as its sidewall says it: design figures of a new tire, without tolerances.</summary>
/// <remarks>Formulas: UN R30, section 6.1. The overall diameter and the factors are from memory; the widening on another rim was read in an amendment of UN R30.</remarks>
public sealed record TireSize
{
    // Widening per width of rim: UN R30, 6.1.1.1.
    private const double Widening = 0.4;

    // Measuring rim as a share of the section width, UN R30 and ISO 4000-1, from memory. For flotation sizes it is the narrow side: real measuring
    // rims tend to be wider, so that the width on a typed rim comes out too wide rather than too narrow.
    private const double RimShare = 0.70, RimShareOfLowSeries = 0.85, LowSeriesBelow = 50;

    // Beyond what tires of road vehicles have; common practice, no source.
    private const double LeastWidthMm = 100, MostWidthMm = 500, LeastAspect = 20, MostAspect = 110;
    private const double LeastRimCode = 10, MostRimCode = 30, LeastOverallMm = 400, MostOverallMm = 1500;

    // No sidewall says more; the patterns' time grows with the square of the text's length.
    private const int LongestText = 40;

    private const double Inch = 25.4;

    private TireSize(double sectionWidthMm, double sectionHeightMm, double rimDiameterMm, TireConstruction construction)
    {
        SectionWidthMm = sectionWidthMm;
        SectionHeightMm = sectionHeightMm;
        RimDiameterMm = rimDiameterMm;
        Construction = construction;
    }

    /// <summary>Nominal section width on the measuring rim, mm.</summary>
    public double SectionWidthMm { get; }

    /// <summary>From the bead seat to the tread, mm; not rounded.</summary>
    public double SectionHeightMm { get; }

    /// <summary>Nominal diameter of the bead seats, mm: the rim's code times 25.4.</summary>
    public double RimDiameterMm { get; }

    /// <summary>Radial or bias.</summary>
    public TireConstruction Construction { get; }

    /// <summary>Section height over section width, percent.</summary>
    public double AspectRatio => 100 * SectionHeightMm / SectionWidthMm;

    /// <summary>Overall diameter, mm: rim and two section heights.</summary>
    public double OverallDiameterMm => RimDiameterMm + (2 * SectionHeightMm);

    /// <summary>Width between the bead seats of the rim on which the tire has its nominal width, mm; not rounded to a rim that is made.</summary>
    public double MeasuringRimWidthMm => (AspectRatio < LowSeriesBelow - 1e-9 ? RimShareOfLowSeries : RimShare) * SectionWidthMm;

    /// <summary>Section width on a rim of another width, mm: 0.4 mm for each mm of rim.</summary>
    /// <param name="rimWidthMm">Between the bead seats.</param>
    public double SectionWidthOnMm(double rimWidthMm) => SectionWidthMm + (Widening * (Positive.OrThrow(rimWidthMm, nameof(rimWidthMm)) - MeasuringRimWidthMm));

    /// <summary>Reads a size such as <c>285/75R16</c>, <c>LT285/75R16 126Q</c> or <c>35x12.50R17LT</c>.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out TireSize? size) => TryParse(text, out size, out _);

    /// <summary>Reads a size and says what is wrong where it is none.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out TireSize? size, out TireSizeFault fault)
    {
        string trimmed = text?.Trim() ?? "";
        size = null;
        if (trimmed.Length > LongestText) fault = TireSizeFault.Form;
        else if (TireSizePatterns.Metric().Match(trimmed) is { Success: true } metric)
        {
            double width = Number(metric, "width");
            size = Made(width, width * Number(metric, "aspect") / 100, metric, out fault);
        }
        else if (TireSizePatterns.Flotation().Match(trimmed) is { Success: true } flotation)
        {
            double height = Inch * (Number(flotation, "diameter") - Number(flotation, "rim")) / 2;
            size = Made(Inch * Number(flotation, "width"), height, flotation, out fault);
        }
        else fault = TireSizeFault.Form;

        return size is not null;
    }

    private static TireSize? Made(double widthMm, double heightMm, Match match, out TireSizeFault fault)
    {
        double rimCode = Number(match, "rim");
        fault = Fault(widthMm, heightMm, rimCode);
        TireConstruction construction = match.Groups["construction"].ValueSpan.EndsWith("R", StringComparison.OrdinalIgnoreCase) ? TireConstruction.Radial : TireConstruction.Bias;
        return fault == TireSizeFault.None ? new TireSize(widthMm, heightMm, Inch * rimCode, construction) : null;
    }

    private static TireSizeFault Fault(double widthMm, double heightMm, double rimCode)
    {
        if (widthMm is < LeastWidthMm or > MostWidthMm) return TireSizeFault.SectionWidth;
        if (rimCode is < LeastRimCode or > MostRimCode || heightMm <= 0) return TireSizeFault.RimDiameter;
        if ((Inch * rimCode) + (2 * heightMm) is < LeastOverallMm or > MostOverallMm) return TireSizeFault.OverallDiameter;
        // A share of exactly 20 or 110 percent may come out a rounding beside it.
        return (100 * heightMm / widthMm) is < LeastAspect - 1e-9 or > MostAspect + 1e-9 ? TireSizeFault.AspectRatio : TireSizeFault.None;
    }

    private static double Number(Match match, string group) => double.Parse(match.Groups[group].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
