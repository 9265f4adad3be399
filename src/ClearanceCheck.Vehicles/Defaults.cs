namespace ClearanceCheck.Vehicles;

/// <summary>Values used where nobody typed one; each use is listed in the report. Common practice, no source, unless said otherwise.</summary>
public static class Defaults
{
    /// <summary>Half-width of a hidden joint centre, mm.</summary>
    public const double JointCentreMm = 4;

    /// <summary>Half-width of a point on a pipe, hose or plate, mm.</summary>
    public const double SurfaceMm = 2;

    /// <summary>Half-width of a tape reading such as hub to fender, mm.</summary>
    public const double TapeMm = 3;

    /// <summary>Half-width of the middle of a coil spring's seat, mm.</summary>
    public const double CoilSeatMm = 6;

    /// <summary>Half-width of where a scan lies on the vehicle, mm.</summary>
    public const double ScanMm = 5;

    /// <summary>Half-width of where a mirrored point lies beside the mirror image of its source, mm.</summary>
    public const double MirrorMm = 6;

    /// <summary>Half-width of an angle from a finder, degrees: its resolution.</summary>
    public const double FinderDegrees = 0.1;

    /// <summary>How far a point that was measured once more may lie from the model's, beyond both half-widths, before it is said, mm.</summary>
    public const double ComparedBeyondMm = 2;

    /// <summary>Half-width of a gap by feeler gauge or drill shank, mm.</summary>
    public const double FeelerMm = 0.5;

    /// <summary>Half-width of a gap by clay, mm.</summary>
    public const double ClayMm = 1;

    /// <summary>Half-width of a gap by tape, mm.</summary>
    public const double TapedGapMm = 1.5;

    /// <summary>Half-width of an outside diameter or another size that is taken with a caliper or known from its maker, mm.</summary>
    public const double SizeMm = 0.25;

    /// <summary>Thickness of a wheel's barrel, mm.</summary>
    public const double BarrelWallMm = 6;

    /// <summary>Thickness of a wheel's disc, mm.</summary>
    public const double DiscWallMm = 10;

    /// <summary>Half-width of a wheel's thickness that nobody typed, mm. A guess.</summary>
    public const double WallWithinMm = 2;

    /// <summary>Half-width of a shock's open or closed length or a stop's height, mm. A guess.</summary>
    public const double StopLengthMm = 2;

    /// <summary>Half-width of a bump stop's crush, mm. A guess.</summary>
    public const double CrushMm = 5;

    /// <summary>Share of its free height that a rubber bump stop gives.</summary>
    public const double RubberCrush = 0.50;

    /// <summary>Share of its free height that a foam bump stop gives.</summary>
    public const double FoamCrush = 0.75;

    /// <summary>Half-width of a limit strap's length, mm. A guess.</summary>
    public const double StrapLengthMm = 5;

    /// <summary>Share of its length that a limit strap stretches when taut.</summary>
    public const double StrapStretch = 0.05;

    /// <summary>How much more or less of its stretch a limit strap may give, as a share of it. A guess.</summary>
    public const double StrapStretchWithin = 0.5;

    /// <summary>How far a steering stop gives beyond contact, mm.</summary>
    public const double SteeringStopMm = 1;

    /// <summary>Half-width of a length of an axle's layout, such as a leaf spring's clamp or an arm, mm. A guess.</summary>
    public const double FigureMm = 5;

    /// <summary>Half-width of such a length where nobody typed it, mm. A guess.</summary>
    public const double AssumedFigureMm = 25;

    /// <summary>How far a leaf may lie up or down beside the arc of one curvature that it is taken for, mm: what tapered beams, integrated, differ from it, rounded up.</summary>
    public const double LeafShapeMm = 3;

    /// <summary>How far an axle on leaf springs winds up where nobody typed it, nose up under drive, degrees.</summary>
    public const double WrapUpDegrees = 3;

    /// <summary>And nose down under braking, degrees.</summary>
    public const double WrapDownDegrees = 5;

    /// <summary>What a shock's bushings give at each end, mm: the shock ends the travel that much later.</summary>
    public const double ShockBushingMm = 3;

    /// <summary>Contact near a joined end is meant within this many outside diameters.</summary>
    public const double JoinedEndDiameters = 1.5;

    /// <summary>And within at least this many mm.</summary>
    public const double JoinedEndMm = 30;
}
