using ClearanceCheck.Geometry;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans;

/// <summary>Whether what was claimed can be used, and whether the scan is as long as claimed.</summary>
internal static class ClaimChecks
{
    private static readonly LengthUnit[] Units = [LengthUnit.Millimetre, LengthUnit.Centimetre, LengthUnit.Metre, LengthUnit.Inch, LengthUnit.Foot];
    private static readonly ScanSide[] Sides = [ScanSide.X, ScanSide.Y, ScanSide.Z];

    /// <summary>Looks at the claims before the file is read; says every fault.</summary>
    public static bool AreSound(ScanFile file)
    {
        ScanClaims claims = file.Claims;
        int before = file.Diagnostics.Count;
        if (Vector3d.Dot(claims.Up.Direction(), claims.Forward.Direction()) != 0) ScanMessages.AxesNotSquare(file);
        if (!claims.Shift.IsFinite) ScanMessages.ShiftNotFinite(file);
        if (claims.Sizes.IsDefaultOrEmpty)
        {
            ScanMessages.NoSize(file);
            return false;
        }

        foreach (ScanSize size in claims.Sizes)
        {
            if (!(size.LengthMm > 0) || !double.IsFinite(size.LengthMm)) ScanMessages.SizeNotPositive(file, size);
            else if (!(size.WithinMm > 0) || !(size.WithinMm <= ScanLimits.MostWithin * size.LengthMm)) ScanMessages.SizeTooLoose(file, size);
        }

        return file.Diagnostics.Count == before;
    }

    /// <summary>Compares the scan with the claimed lengths; says each that differs.</summary>
    public static bool SizesFit(ScanFile file, Scan scan)
    {
        bool all = true;
        foreach (ScanSize size in file.Claims.Sizes)
        {
            double measured = Along(scan, size.Side);
            if (Fits(size, measured)) continue;
            ScanMessages.SizeDiffers(file, size, measured, FittingUnit(file, scan), FittingSide(scan, size));
            all = false;
        }

        return all;
    }

    private static double Along(Scan scan, ScanSide side) => side switch
    {
        ScanSide.X => scan.Extent.X,
        ScanSide.Y => scan.Extent.Y,
        ScanSide.Z => scan.Extent.Z,
        _ => Math.Max(scan.Extent.X, Math.Max(scan.Extent.Y, scan.Extent.Z)),
    };

    private static bool Fits(ScanSize size, double measured) => Math.Abs(measured - size.LengthMm) <= size.WithinMm;

    // The unit in which every claim would fit.
    private static LengthUnit? FittingUnit(ScanFile file, Scan scan)
    {
        double claimed = ScanPlacement.MillimetresIn(file.Claims.Unit);
        foreach (LengthUnit unit in Units)
        {
            double factor = ScanPlacement.MillimetresIn(unit) / claimed;
            if (file.Claims.Sizes.All(size => Fits(size, Along(scan, size.Side) * factor))) return unit;
        }

        return null;
    }

    private static ScanSide? FittingSide(Scan scan, ScanSize size)
    {
        if (size.Side == ScanSide.Longest) return null;
        foreach (ScanSide side in Sides)
            if (Fits(size, Along(scan, side))) return side;
        return null;
    }
}
