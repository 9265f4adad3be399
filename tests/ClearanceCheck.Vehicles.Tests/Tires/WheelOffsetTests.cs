using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Vehicles.Tests.Tires;

public sealed class WheelOffsetTests
{
    // Rule of the trade from memory: BS = (W + 1.0) / 2 + ET / 25.4, in inches.
    [Theory]
    [InlineData(9, 12, 5.47)]
    [InlineData(8.5, 0, 4.75)]
    [InlineData(9, -12, 4.53)]
    [InlineData(7.5, 44, 5.98)]
    public void Backspacing_follows_from_the_offset_and_back(double widthInches, double offset, double inches)
    {
        double backspacing = WheelOffset.BackspacingMm(widthInches * 25.4, offset);

        (backspacing / 25.4).ShouldBe(inches, 0.005);
        WheelOffset.OffsetMm(widthInches * 25.4, backspacing).ShouldBe(offset, 1e-9);
    }

    // By hand: 318 / 2 - 12 and 318 / 2 + 12.
    [Fact]
    public void A_negative_offset_moves_the_tire_away_from_the_frame()
    {
        WheelOffset.InnerSideMm(318, -12).ShouldBe(147, 1e-9);
        WheelOffset.OuterSideMm(318, -12).ShouldBe(171, 1e-9);
    }

    // By hand: twice 44 + 12; a spacer adds twice its thickness.
    [Fact]
    public void The_track_grows_by_twice_what_offset_and_spacer_give()
    {
        WheelOffset.TrackChangeMm(44, -12, 0).ShouldBe(112, 1e-9);
        WheelOffset.TrackChangeMm(0, 0, 25).ShouldBe(50, 1e-9);
    }
}
