namespace ClearanceCheck.Vehicles.Tires;

/// <summary>Where rim and tire lie beside the hub. The rim's middle plane lies the offset inboard of the mounting face: positive where the face is outboard of the middle.</summary>
public static class WheelOffset
{
    // A flange outside each bead seat, about 0.5 in; common practice, no source.
    private const double FlangeMm = 12.7;

    /// <summary>From the mounting face inboard to the tire's inner side, mm.</summary>
    public static double InnerSideMm(double sectionWidthMm, double offsetMm) => (sectionWidthMm / 2) + offsetMm;

    /// <summary>From the mounting face outboard to the tire's outer side, mm.</summary>
    public static double OuterSideMm(double sectionWidthMm, double offsetMm) => (sectionWidthMm / 2) - offsetMm;

    /// <summary>Backspacing: from the mounting face inboard to the edge of the rim's inner flange, mm.</summary>
    /// <param name="rimWidthMm">Between the bead seats.</param>
    public static double BackspacingMm(double rimWidthMm, double offsetMm) => (rimWidthMm / 2) + FlangeMm + offsetMm;

    /// <summary>The offset of a rim with that backspacing, mm.</summary>
    /// <param name="rimWidthMm">Between the bead seats.</param>
    public static double OffsetMm(double rimWidthMm, double backspacingMm) => backspacingMm - (rimWidthMm / 2) - FlangeMm;

    /// <summary>What the track grows by with other wheels and a spacer on each side, mm.</summary>
    public static double TrackChangeMm(double oldOffsetMm, double newOffsetMm, double spacerMm) => 2 * (oldOffsetMm - newOffsetMm + spacerMm);
}
