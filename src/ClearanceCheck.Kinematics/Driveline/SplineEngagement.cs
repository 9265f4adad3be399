namespace ClearanceCheck.Kinematics.Driveline;

/// <summary>How far the halves of a shaft are pushed into each other.</summary>
/// <param name="EngagedMm">Length of spline that carries, mm: nothing when pulled apart, the whole spline when it bottoms.</param>
/// <param name="LeftOutMm">What the shaft can still grow before its splines part, mm; negative by as much as the ends are too far apart.</param>
/// <param name="LeftInMm">What it can still shorten before it bottoms, mm; negative by as much as the ends are too near.</param>
public readonly record struct SplineEngagement(double EngagedMm, double LeftOutMm, double LeftInMm)
{
    /// <summary>The engagement after a change of the shaft's length.</summary>
    /// <param name="lengthMm">Length of the splines, mm.</param>
    /// <param name="measuredMm">What was engaged as measured, mm.</param>
    /// <param name="slipMm">How much further apart the ends are than as measured, mm.</param>
    public static SplineEngagement Of(double lengthMm, double measuredMm, double slipMm)
    {
        double engaged = measuredMm - slipMm;
        return new SplineEngagement(Math.Clamp(engaged, 0, Math.Max(0, lengthMm)), engaged, lengthMm - engaged);
    }
}
