namespace ClearanceCheck.Files.Tests;

/// <summary>Every message about an axle's wheel and rods, whole.</summary>
public sealed class WheelFaultTests
{
    private const string Size = "      tire: 285/75R16\n";
    private const string Circumference = "      tire-circumference: 2622 mm\n";
    private const string Links = "links: { lower-link-left: 51 mm, lower-link-right: 51 mm, track-bar: 38 mm }";

    public static TheoryData<string, string, string> Cases { get; } = new()
    {
        { "no-tire-size", Size + Circumference, "" },
        { "tire-without-width-or-rim", Size + Circumference, Circumference + "      rim-diameter: 16 in\n" },
        { "no-such-tire-size", "tire: 285/75R16", "tire: 285-75-16" },
        { "tire-size-without-rim", "tire: 285/75R16", "tire: 285/75R160" },
        { "tire-smaller-than-rim", "tire: 285/75R16", "tire: 5x4R15" },
        { "rim-larger-than-tire", "tire: 285/75R16\n      tire-circumference: 2622 mm", "tire-width: 290 mm\n      rim-diameter: 17 in\n      tire-circumference: 1350 mm" },
        { "circumference-differs", "2622 mm", "2262 mm" },
        { "circumference-is-diameter", "2622 mm", "834 mm" },
        { "rim-diameter-twice", Circumference, "      rim-diameter: 16 in\n" },
        { "no-offset", "      offset: -10 mm\n", "" },
        { "offset-beyond-rim", "offset: -10 mm", "offset: 160 mm" },
        { "barrel-wider-than-bead", "[192, 30]", "[212, 30]" },
        { "disc-beyond-barrel", "disc: [[57, 0], [150, 38], [180, 60]]", "disc: [[57, 0], [150, 38], [196, 60]]" },
        { "barrel-beside-rim", "barrel: [[192, -92], [192, 30], [180, 112]]", "barrel: [[192, -132], [192, 30], [180, 92]]" },
        { "barrel-missing", "      barrel: [[192, -92], [192, 30], [180, 112]]\n", "" },
        { "disc-missing", "      disc: [[57, 0], [150, 38], [180, 60]]\n", "" },
        { "made-by-axle", "  tailpipe:\n", "  rear-right-tire:\n" },
        { "link-made-by-axle", "  tailpipe:\n", "  rear-track-bar:\n" },
        { "no-such-rod", Links, "links: { lower-lnk-left: 51 mm }" },
        { "rod-without-length", "track-bar-axle: [-668, -445, -320]", "track-bar-axle: [-700, 470, -132]" },
        { "wheel-key-misspelt", "rim-width: 8 in", "rim-wdith: 8 in" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_fault_gets_its_one_message(string name, string old, string fresh)
    {
        InspectionReading reading = EveryForm.Read((old, fresh));

        reading.Vehicle.ShouldBeNull();
        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
        Golden.Matches(name, reading.Messages());
    }

    [Theory]
    [InlineData("links: { lowr: 44 mm }", "free-no-such-rod")]
    [InlineData("links: { pin: 44 mm }", "free-rod-is-no-rod")]
    public void A_free_layout_has_the_rods_that_it_names(string keys, string name)
    {
        InspectionReading reading = FreeAxle.Read(keys);

        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void A_layout_without_rods_takes_no_diameters_of_rods()
    {
        InspectionReading reading = FreeAxle.Read("links: { pin: 44 mm }", rods: false);

        reading.Diagnostics.Ordered.Count.ShouldBe(1, reading.Messages());
        Golden.Matches("no-rods", reading.Messages());
    }
}
