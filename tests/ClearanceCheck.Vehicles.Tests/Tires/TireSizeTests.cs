using System.Globalization;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Vehicles.Tests.Tires;

public sealed class TireSizeTests
{
    // Computed by hand from D = 25.4 code + 2 H; the inches of 265/75R16, 275/70R16 and 265/70R16 round to the 31.5, 31 and 30.5 in of a tire size chart.
    [Theory]
    [InlineData("205/60R15", "123.0", "627.0", "24.69", "313.5")]
    [InlineData("235/85R16", "199.8", "805.9", "31.73", "402.9")]
    [InlineData("265/70R16", "185.5", "777.4", "30.61", "388.7")]
    [InlineData("265/75R16", "198.8", "803.9", "31.65", "401.9")]
    [InlineData("275/70R16", "192.5", "791.4", "31.16", "395.7")]
    [InlineData("285/75R16", "213.8", "833.9", "32.83", "416.9")]
    [InlineData("255/75R17", "191.3", "814.3", "32.06", "407.1")]
    [InlineData("265/70R17", "185.5", "802.8", "31.61", "401.4")]
    [InlineData("285/70R17", "199.5", "830.8", "32.71", "415.4")]
    [InlineData("295/70R17", "206.5", "844.8", "33.26", "422.4")]
    [InlineData("315/70R17", "220.5", "872.8", "34.36", "436.4")]
    [InlineData("275/65R20", "178.8", "865.5", "34.07", "432.8")]
    // By definition of the size: owner's manuals' size chart, overall diameter, section width and rim in inches.
    [InlineData("31x10.50R15LT", "203.2", "787.4", "31.00", "393.7")]
    [InlineData("33x12.50R15LT", "228.6", "838.2", "33.00", "419.1")]
    [InlineData("35x12.50R17LT", "228.6", "889.0", "35.00", "444.5")]
    [InlineData("37x12.50R17LT", "254.0", "939.8", "37.00", "469.9")]
    public void A_size_gives_the_worked_height_and_diameter(string text, string height, string diameter, string inches, string radius)
    {
        TireSize size = Read(text);

        ShouldPrint(size.SectionHeightMm, height);
        ShouldPrint(size.OverallDiameterMm, diameter);
        ShouldPrint(size.OverallDiameterMm / 25.4, inches);
        ShouldPrint(size.OverallDiameterMm / 2, radius);
    }

    // Tire and Rim Association figures for P205/60R15 on a 6.0 in rim, reported in a tire forum: design width 8.23 in, design diameter 24.69 in,
    // section height 4.845 in, largest diameter 24.98 in at 103 % of the height. UN R30 rounds the width to 1 mm.
    [Fact]
    public void P205_60R15_has_its_published_design_figures()
    {
        TireSize size = Read("P205/60R15");

        double width = Math.Round(size.SectionWidthOnMm(6.0 * 25.4));
        width.ShouldBe(209);
        (width / 25.4).ShouldBe(8.23, 0.005);
        (size.OverallDiameterMm / 25.4).ShouldBe(24.69, 0.005);
        (size.SectionHeightMm / 25.4).ShouldBe(4.845, 0.003);
        ((size.RimDiameterMm + (2 * 1.03 * size.SectionHeightMm)) / 25.4).ShouldBe(24.98, 0.005);
    }

    // Rule of a tire importer's technical page: 0.2 in of section for 0.5 in of rim; UN R30 0.4 mm for each mm.
    [Theory]
    [InlineData("285/75R16")]
    [InlineData("35x12.50R17LT")]
    public void Half_an_inch_more_rim_makes_a_fifth_of_an_inch_more_section(string text)
    {
        TireSize size = Read(text);

        size.SectionWidthOnMm(size.MeasuringRimWidthMm).ShouldBe(size.SectionWidthMm, 1e-9);
        (size.SectionWidthOnMm(9 * 25.4) - size.SectionWidthOnMm(8.5 * 25.4)).ShouldBe(5.08, 1e-9);
    }

    // UN R30 and ISO 4000-1, from memory: 0.70 for 50 series and higher, 0.85 below.
    [Theory]
    [InlineData("275/50R20", 192.5)]
    [InlineData("275/45R20", 233.75)]
    public void Low_series_are_measured_on_wider_rims(string text, double rim) => Read(text).MeasuringRimWidthMm.ShouldBe(rim, 1e-9);

    [Theory]
    [InlineData("285/75R16", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("  LT285/75R16 126Q ", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("LT 285/75 R16", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("LT285/75R16/E 126/123Q", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("lt285/75r16e", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("275/40ZR20 (106Y) XL", 275, 40, 508, TireConstruction.Radial)]
    [InlineData("235/85D16", 235, 85, 406.4, TireConstruction.Bias)]
    [InlineData("235/85-16", 235, 85, 406.4, TireConstruction.Bias)]
    [InlineData("225/70R19.5", 225, 70, 495.3, TireConstruction.Radial)]
    [InlineData("31x10.5R15", 266.7, 76.190476, 381, TireConstruction.Radial)]
    [InlineData("35X12.50R17LT 121Q", 317.5, 72, 431.8, TireConstruction.Radial)]
    [InlineData("31X10.50R15LT/C 109Q", 266.7, 76.190476, 381, TireConstruction.Radial)]
    [InlineData("LT285/75R16 126/123Q M+S", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("P285/75R16 117T SL", 285, 75, 406.4, TireConstruction.Radial)]
    [InlineData("35x12.50-15", 317.5, 80, 381, TireConstruction.Bias)]
    public void A_size_is_read_with_or_without_what_stands_beside_it(string text, double width, double aspect, double rim, TireConstruction construction)
    {
        TireSize size = Read(text);

        size.SectionWidthMm.ShouldBe(width, 1e-9);
        size.AspectRatio.ShouldBe(aspect, 1e-6);
        size.RimDiameterMm.ShouldBe(rim, 1e-9);
        size.Construction.ShouldBe(construction);
    }

    [Theory]
    [InlineData(null, TireSizeFault.Form)]
    [InlineData("", TireSizeFault.Form)]
    [InlineData("abc", TireSizeFault.Form)]
    [InlineData("285/75", TireSizeFault.Form)]
    [InlineData("285/75R", TireSizeFault.Form)]
    [InlineData("205R16", TireSizeFault.Form)]
    [InlineData("-285/75R16", TireSizeFault.Form)]
    [InlineData("285/-75R16", TireSizeFault.Form)]
    [InlineData("285,5/75R16", TireSizeFault.Form)]
    [InlineData("285/75R16 and more", TireSizeFault.Form)]
    [InlineData("285/75R16\n285/75R16", TireSizeFault.Form)]
    [InlineData("\u0662\u0668\u0665/75R16", TireSizeFault.Form)]
    [InlineData("28555555/75R16", TireSizeFault.Form)]
    [InlineData("285/75R16                                        126Q", TireSizeFault.Form)]
    [InlineData("2855/75R16", TireSizeFault.SectionWidth)]
    [InlineData("35x125R17", TireSizeFault.SectionWidth)]
    [InlineData("285/75R160", TireSizeFault.RimDiameter)]
    [InlineData("285/75R0", TireSizeFault.RimDiameter)]
    [InlineData("12.50x17R35", TireSizeFault.RimDiameter)]
    [InlineData("15x6.00R17", TireSizeFault.RimDiameter)]
    [InlineData("285/750R16", TireSizeFault.OverallDiameter)]
    [InlineData("350x12.50R17", TireSizeFault.OverallDiameter)]
    [InlineData("285/0R16", TireSizeFault.RimDiameter)]
    [InlineData("285/7R16", TireSizeFault.AspectRatio)]
    [InlineData("205/120R16", TireSizeFault.AspectRatio)]
    public void Nonsense_is_refused_and_named(string? text, TireSizeFault expected)
    {
        TireSize.TryParse(text, out TireSize? size, out TireSizeFault fault).ShouldBeFalse();

        size.ShouldBeNull();
        fault.ShouldBe(expected);
    }

    [Fact]
    public void A_size_is_read_alike_under_a_culture_with_decimal_commas()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Read("35x12.50R17LT").SectionWidthMm.ShouldBe(317.5, 1e-9);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static TireSize Read(string text)
    {
        TireSize.TryParse(text, out TireSize? size, out TireSizeFault fault).ShouldBeTrue();
        fault.ShouldBe(TireSizeFault.None);
        return size!;
    }

    // Half a unit of the last printed digit, whichever way a half was rounded.
    private static void ShouldPrint(double value, string printed)
    {
        int decimals = printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1;
        value.ShouldBe(double.Parse(printed, CultureInfo.InvariantCulture), (0.5 / Math.Pow(10, decimals)) + 1e-9);
    }
}
