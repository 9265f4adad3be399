namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The box, in the axes of a piece of a leaf spring, that holds its stretch of the bent and twisted leaf in every pose that has an answer.</summary>
/// <remarks>
/// Let the piece be l long, the leaf's curvature at most k, its sideways slope m, its twist per piece 2 b. Seen from the section at the piece's middle:
/// the middle line lies within k l^2 / 16 of it up and down (half of the arc's rise, to both sides) and beside it by m k^2 l^3 / 48; rolled with the
/// section, each adds to the other. A section at the end has rolled by b, then turned by a = k l / 2 about an axis whose parts along, across and up are at
/// most m, 1 and the twist q. Of an offset (0, u, v) the roll makes at most (u + v b, v + u b); the turn (Rodrigues) adds at most a (v + q u) along,
/// a m v across, a m u up, and a^2 / 2 times q (along: 1) of its length; offsets only get shorter by what is left. Derived here; tested with random leaves.
/// </remarks>
/// <param name="HalfAlongMm">From the middle to either end.</param>
/// <param name="HalfAcrossMm">From the middle to either edge.</param>
/// <param name="DownMm">From the middle to the lowest face.</param>
/// <param name="UpMm">From the middle to the uppermost face.</param>
public readonly record struct LeafPieceBox(double HalfAlongMm, double HalfAcrossMm, double DownMm, double UpMm)
{
    internal static LeafPieceBox Of(double lengthMm, double widthMm, double belowMm, double aboveMm)
    {
        const double Slope = LeafPiece.MostSlope, Twist = LeafPiece.MostTwist;
        double curvature = LeafShape.MostCurvature(lengthMm), piece = lengthMm / LeafPiece.Count, half = piece / 2;
        double rise = curvature * piece * piece / 16, beside = Slope * curvature * curvature * piece * piece * piece / 48;
        double turn = curvature * half, roll = Twist / (2 * LeafPiece.Count);
        double u = widthMm / 2, v = Math.Max(Math.Abs(belowMm), Math.Abs(aboveMm));
        double rolledU = u + (v * roll), rolledV = v + (u * roll), size = Math.Sqrt((rolledU * rolledU) + (rolledV * rolledV)), second = turn * turn / 2 * size;
        double across = (v * roll) + (rise * Twist) + beside + (turn * Slope * rolledV) + (second * Twist);
        double up = rise + beside + (u * roll) + (turn * Slope * rolledU) + (second * Twist);
        double along = (half * Math.Sqrt(1 + (Slope * Slope))) + (turn * (rolledV + (Twist * rolledU))) + second;
        return new LeafPieceBox(along, u + across, belowMm + up, aboveMm + up);
    }
}
