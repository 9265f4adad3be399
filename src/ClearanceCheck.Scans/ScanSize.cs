namespace ClearanceCheck.Scans;

/// <summary>How long the scanned thing really is: what shows whether the unit and the axes of its file are right.</summary>
/// <param name="Side">Along what it was measured.</param>
/// <param name="LengthMm">The length measured on the thing, mm.</param>
/// <param name="WithinMm">How far the scan's length may be from it, mm; a tenth of the length at most.</param>
public sealed record ScanSize(ScanSide Side, double LengthMm, double WithinMm);
