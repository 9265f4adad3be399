using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Vehicles.Tests.Tires;

public sealed class TireEnvelopeTests
{
    // Largest diameter by UN R30 (rim and height rounded to 1 mm, 1.04 of the height; from memory) and 1.04 of the section width.
    // The product does not round rim and height; the test does, to meet the printed digit with the product's own factor.
    [Theory]
    [InlineData("205/60R15", 636.8, 213.2)]
    [InlineData("235/85R16", 822.0, 244.4)]
    [InlineData("265/70R16", 792.9, 275.6)]
    [InlineData("265/75R16", 819.9, 275.6)]
    [InlineData("275/70R16", 807.4, 286.0)]
    [InlineData("285/75R16", 851.1, 296.4)]
    [InlineData("255/75R17", 829.3, 265.2)]
    [InlineData("265/70R17", 818.9, 275.6)]
    [InlineData("285/70R17", 848.0, 296.4)]
    [InlineData("295/70R17", 862.6, 306.8)]
    [InlineData("315/70R17", 891.7, 327.6)]
    [InlineData("275/65R20", 880.3, 286.0)]
    [InlineData("31x10.50R15LT", null, 277.4)]
    [InlineData("33x12.50R15LT", null, 330.2)]
    [InlineData("35x12.50R17LT", null, 330.2)]
    [InlineData("37x12.50R17LT", null, 330.2)]
    public void A_new_tire_reaches_the_largest_size_allowed(string size, double? diameter, double width)
    {
        TireEnvelope envelope = Of(size);
        TireSize nominal = Read(size);
        double factor = 1 + (envelope.RadiusToleranceMm / nominal.SectionHeightMm);

        envelope.NominalRadiusMm.ShouldBe(nominal.OverallDiameterMm / 2, 1e-9);
        if (diameter is { } largest) (Rounded(nominal.RimDiameterMm) + (2 * factor * Rounded(nominal.SectionHeightMm))).ShouldBe(largest, 0.05);
        (envelope.NominalWidthMm + envelope.WidthToleranceMm).ShouldBe(width, 0.05);
    }

    // By hand for 285/75R16: D/2 = 203.2 + 213.75 = 416.95; 0.04 x 213.75 = 8.55; 1 % = 4.1695; runout 1.6. Width 285 + 11.4 + 5.7 + 3.2.
    [Fact]
    public void Every_term_of_a_size_is_told()
    {
        TireEnvelope envelope = Of("285/75R16");

        envelope.NominalRadiusMm.ShouldBe(416.95, 1e-9);
        envelope.RadiusToleranceMm.ShouldBe(8.55, 1e-9);
        envelope.RadiusGrowthMm.ShouldBe(4.1695, 1e-9);
        envelope.RunoutMm.ShouldBe(1.6);
        envelope.RadiusMm.ShouldBe(431.2695, 1e-9);
        envelope.NominalWidthMm.ShouldBe(285, 1e-9);
        envelope.WidthToleranceMm.ShouldBe(11.4, 1e-9);
        envelope.WidthGrowthMm.ShouldBe(5.7, 1e-9);
        envelope.WidthMm.ShouldBe(305.3, 1e-9);
    }

    // 2600 mm around is 413.8029 mm of radius.
    [Fact]
    public void Measured_figures_win_over_the_size_and_take_no_tolerance()
    {
        TireEnvelope envelope = new(Read("285/75R16"), 2600, 290, 203.2, 0);

        envelope.NominalRadiusMm.ShouldBe(413.8029, 5e-5);
        envelope.RadiusToleranceMm.ShouldBe(0);
        envelope.RadiusMm.ShouldBe((1.01 * 413.8029) + 1.6, 1e-4);
        envelope.NominalWidthMm.ShouldBe(290);
        envelope.WidthToleranceMm.ShouldBe(0);
        envelope.WidthMm.ShouldBe((1.02 * 290) + 3.2, 1e-9);
    }

    [Fact]
    public void A_measured_circumference_leaves_the_width_to_the_size()
    {
        TireEnvelope envelope = new(Read("285/75R16"), 2600, null, null, 0);

        envelope.RadiusToleranceMm.ShouldBe(0);
        envelope.WidthMm.ShouldBe(305.3, 1e-9);
    }

    // 9 in rim: 228.6 - 0.70 x 285 = 29.1 mm wider than the measuring rim, 0.4 of it.
    [Fact]
    public void A_wider_rim_makes_a_wider_tire() => new TireEnvelope(Read("285/75R16"), null, null, 228.6, 0).NominalWidthMm.ShouldBe(296.64, 1e-9);

    [Fact]
    public void Chains_are_added_to_the_radius_and_to_both_sides()
    {
        TireEnvelope bare = Of("285/75R16"), chained = new(Read("285/75R16"), null, null, null, 15);

        (chained.RadiusMm - bare.RadiusMm).ShouldBe(15, 1e-9);
        (chained.WidthMm - bare.WidthMm).ShouldBe(30, 1e-9);
    }

    // UN R30 allows bias plies 6 % of the width; from memory.
    [Fact]
    public void Bias_plies_may_be_wider()
    {
        Of("235/85D16").WidthTolerancePercent.ShouldBe(6);
        Of("235/85R16").WidthTolerancePercent.ShouldBe(4);
    }

    [Fact]
    public void A_tire_without_a_size_needs_both_measured_figures()
    {
        new TireEnvelope(null, 2600, 290, null, 0).RadiusMm.ShouldBeGreaterThan(413);
        Should.Throw<ArgumentException>(() => new TireEnvelope(null, 2600, null, 203.2, 0));
        Should.Throw<ArgumentException>(() => new TireEnvelope(null, null, 290, null, 0));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1.0)]
    public void Figures_that_are_no_sizes_are_refused(double mm)
    {
        TireSize size = Read("285/75R16");
        Should.Throw<ArgumentOutOfRangeException>(() => new TireEnvelope(size, mm, null, null, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => new TireEnvelope(size, null, mm, null, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => new TireEnvelope(size, null, null, mm, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => new TireEnvelope(size, null, null, null, mm));
    }

    private static double Rounded(double mm) => Math.Round(mm, MidpointRounding.AwayFromZero);

    private static TireEnvelope Of(string size) => new(Read(size), null, null, null, 0);

    private static TireSize Read(string text) => TireSize.TryParse(text, out TireSize? size) ? size : throw new ArgumentException(text);
}
