using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads an angle that lies in a range.</summary>
internal static class Angles
{
    /// <summary>The angle; null where it is absent, faulty or out of range, which is said.</summary>
    /// <param name="field">The value.</param>
    /// <param name="leastDegrees">The least that is taken.</param>
    /// <param name="mostDegrees">The most that is taken.</param>
    /// <param name="what">What it is, as in "out of range for {what}".</param>
    public static Placed<Angle>? Read(Field field, double leastDegrees, double mostDegrees, string what)
    {
        if (field.Angle() is not { } angle) return null;
        // Degrees that were typed come back within a rounding of their own.
        if (angle.Value >= Angle.FromDegrees(leastDegrees) && angle.Value <= Angle.FromDegrees(mostDegrees)) return angle;
        FileMessages.AngleOutOfRange(field, angle, what, leastDegrees, mostDegrees);
        return null;
    }
}
