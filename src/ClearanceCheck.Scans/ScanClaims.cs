using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans;

/// <summary>What a person says about a scan's file, because the file itself does not say it or is not to be trusted with it.</summary>
/// <param name="Unit">What one stands for in the file.</param>
/// <param name="Up">The file's direction that points up on the vehicle.</param>
/// <param name="Forward">The file's direction that points forward, square to <paramref name="Up"/>.</param>
/// <param name="Sizes">Lengths measured on the thing, one at least.</param>
public sealed record ScanClaims(LengthUnit Unit, ScanAxis Up, ScanAxis Forward, ImmutableArray<ScanSize> Sizes)
{
    /// <summary>Where the file's zero lies in the vehicle frame, mm.</summary>
    public Vector3d Shift { get; init; }
}
