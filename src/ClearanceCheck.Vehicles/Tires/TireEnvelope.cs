namespace ClearanceCheck.Vehicles.Tires;

/// <summary>The outer radius and width to sweep for a tire, term by term: as new, tolerance of its making, growth in use, runout and chains. All in mm.</summary>
/// <remarks>
/// A measured circumference or width wins over the size and takes no tolerance: that tire is as large as it was measured.
/// It does take growth, as nobody knows how much of it the tire has behind it. What a worn tread has lost is not given back.
/// </remarks>
public sealed class TireEnvelope
{
    // New tire against its size: 104 % of section height and of section width; 106 % of section width for bias plies. UN R30, from memory; the
    // Tire and Rim Association is reported to allow 103 % of the height, the larger is taken.
    private const double HeightTolerance = 0.04, RadialWidthTolerance = 0.04, BiasWidthTolerance = 0.06;

    // Growth in use: common practice, no source.
    private const double RadiusGrowth = 0.01, WidthGrowth = 0.02;

    /// <param name="size">The size on the sidewall; null needs a circumference and a width.</param>
    /// <param name="circumferenceMm">Measured around the tread.</param>
    /// <param name="sectionWidthMm">Measured at the bulge, on the rim the tire is on.</param>
    /// <param name="rimWidthMm">Between the bead seats; null takes the size's measuring rim. Without meaning where the width was measured.</param>
    /// <param name="chainsMm">What chains add all around; 0 without chains.</param>
    public TireEnvelope(TireSize? size, double? circumferenceMm, double? sectionWidthMm, double? rimWidthMm, double chainsMm)
    {
        double? around = Positive.OrThrow(circumferenceMm, nameof(circumferenceMm)), measured = Positive.OrThrow(sectionWidthMm, nameof(sectionWidthMm));
        double? rim = Positive.OrThrow(rimWidthMm, nameof(rimWidthMm));
        ChainsMm = chainsMm == 0 ? 0 : Positive.OrThrow(chainsMm, nameof(chainsMm));
        NominalRadiusMm = around / (2 * Math.PI) ?? size?.OverallDiameterMm / 2 ?? throw Missing("circumference", nameof(circumferenceMm));
        NominalWidthMm = measured ?? WidthOf(size, rim) ?? throw Missing("section width", nameof(sectionWidthMm));
        RadiusToleranceMm = around is null ? HeightTolerance * size!.SectionHeightMm : 0;
        WidthTolerancePercent = measured is not null ? 0 : 100 * (size!.Construction == TireConstruction.Bias ? BiasWidthTolerance : RadialWidthTolerance);
    }

    /// <summary>Outer radius as measured or as the size says.</summary>
    public double NominalRadiusMm { get; }

    /// <summary>What a new tire of that size may be larger: 4 % of its section height; 0 where the circumference was measured.</summary>
    public double RadiusToleranceMm { get; }

    /// <summary>Growth in use: 1 % of the nominal radius.</summary>
    public double RadiusGrowthMm => RadiusGrowth * NominalRadiusMm;

    /// <summary>Section width as measured or as the size says, on its rim.</summary>
    public double NominalWidthMm { get; }

    /// <summary>How much wider a new tire of that size may be, percent of its width: 4 radial, 6 bias; 0 where the width was measured.</summary>
    public double WidthTolerancePercent { get; }

    /// <summary>What a new tire of that size may be wider, over both sides.</summary>
    public double WidthToleranceMm => WidthTolerancePercent / 100 * NominalWidthMm;

    /// <summary>Growth in use over both sides: 2 % of the nominal width.</summary>
    public double WidthGrowthMm => WidthGrowth * NominalWidthMm;

    /// <summary>Runout of tire and rim, added to the radius and to each side: half of 1/8 in, rounded up. 49 CFR 570.10(b).</summary>
    public double RunoutMm { get; } = 1.6;

    /// <summary>What chains add to the radius and to each side.</summary>
    public double ChainsMm { get; }

    /// <summary>Outer radius to sweep.</summary>
    public double RadiusMm => NominalRadiusMm + RadiusToleranceMm + RadiusGrowthMm + RunoutMm + ChainsMm;

    /// <summary>Section width to sweep.</summary>
    public double WidthMm => NominalWidthMm + WidthToleranceMm + WidthGrowthMm + (2 * (RunoutMm + ChainsMm));

    private static double? WidthOf(TireSize? size, double? rimWidthMm) => rimWidthMm is { } rim ? size?.SectionWidthOnMm(rim) : size?.SectionWidthMm;

    private static ArgumentException Missing(string what, string name) => new($"A tire without a size needs its {what}.", name);
}
