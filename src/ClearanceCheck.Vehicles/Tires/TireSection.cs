using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Tires;

/// <summary>The profile of a tire that is turned around the wheel's axis.</summary>
public static class TireSection
{
    // Tread width over section width is 0.75 to 0.85, common practice, no source; the wide end, because what is swept must contain the tire.
    private const double TreadShare = 0.85;

    /// <summary>Convex polygons of four corners, in order around each, that together contain the tire's cross section.</summary>
    /// <remarks>
    /// The tire is taken to have its full width at half section height and to curve from there to the edge of its tread along an arc.
    /// A straight line between these two would cut the arc off, so the polygons follow its two tangents. With a = half the section height and
    /// b = what the tread is narrower on a side, the tangents meet at full width, (a^2 + b^2) / 2a above half height. Below half height the
    /// full width is kept down to the bead seat: a wide rim reaches that far.
    /// </remarks>
    /// <param name="outerRadiusMm">To the tread.</param>
    /// <param name="sectionWidthMm">At the bulge.</param>
    /// <param name="rimRadiusMm">To the bead seat.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above zero, or the tread does not lie outside the bead seat.</exception>
    public static ImmutableArray<ImmutableArray<TireCorner>> Polygons(double outerRadiusMm, double sectionWidthMm, double rimRadiusMm)
    {
        double half = Positive.OrThrow(sectionWidthMm, nameof(sectionWidthMm)) / 2, rim = Positive.OrThrow(rimRadiusMm, nameof(rimRadiusMm));
        double height = Positive.OrThrow(outerRadiusMm - rim, nameof(outerRadiusMm));
        double a = height / 2, tread = TreadShare * half, b = half - tread;
        // A tire so flat that its arc is more than a quarter turn keeps its full width up to the tread.
        double shoulder = rim + a + (((a * a) + (b * b)) / (2 * a));
        return b < a
            ? [Slice(rim, half, shoulder, half), Slice(shoulder, half, outerRadiusMm, tread)]
            : [Slice(rim, half, outerRadiusMm, half)];
    }

    private static ImmutableArray<TireCorner> Slice(double inner, double innerHalf, double outer, double outerHalf) =>
        [new(inner, -innerHalf), new(inner, innerHalf), new(outer, outerHalf), new(outer, -outerHalf)];
}
