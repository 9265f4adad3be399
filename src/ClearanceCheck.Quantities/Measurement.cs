using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities;

/// <summary>The worst value of a quantity over all reachable poses, in its own unit, with bound, grade, places and uncertainty.</summary>
public sealed record Measurement
{
    /// <summary>Why there is no value; then nothing else may be read but the cells.</summary>
    public string? NotEvaluated { get; init; }

    /// <summary>The worst value found: the first basin reaches it.</summary>
    public double Value { get; init; } = double.NaN;

    /// <summary>No reachable pose of the model is worse.</summary>
    public double Bound { get; init; } = double.NaN;

    public Grade Grade { get; init; }

    /// <summary>The extreme on the other side, bounded in the same way; null for a quantity that bounds one side only.</summary>
    public Measurement? OtherSide { get; init; }

    /// <summary>The worst places, the worst first.</summary>
    public ImmutableArray<WorstPlace> Places { get; init; } = [];

    /// <summary>What it rests on.</summary>
    public MeasurementBasis Basis { get; init; }

    /// <summary>Gaps that were read directly between the two, all of them; one counts where the basis is not the points alone.</summary>
    public ImmutableArray<DirectReading> Readings { get; init; } = [];

    /// <summary>A part that was taken to lie between the points measured on its body; null where none was.</summary>
    public Part? AssumesBetweenPointsOf { get; init; }

    /// <summary>What a direct reading adds to the model's values, mm; they hold it already.</summary>
    public double ShiftMm { get; init; }

    public int Cells { get; init; }

    public bool RefusedAtRoot { get; init; }

    /// <summary>The search ended early with a looser bound.</summary>
    public bool BudgetSpent { get; init; }

    /// <summary>The axle whose pose the places speak of; null when the parts never move against each other.</summary>
    public AxleModule? Module { get; init; }
}

/// <summary>One local worst place of a quantity.</summary>
/// <param name="Value">In the quantity's unit.</param>
/// <param name="Pose">Coordinates of the module, mm or rad; empty when nothing moves.</param>
/// <param name="First">The first part's witness point, vehicle frame, mm.</param>
/// <param name="Second">The second part's witness point, vehicle frame, mm.</param>
/// <param name="StandardUncertainty">In the quantity's unit.</param>
/// <param name="Shares">Readings by their share of the variance, the largest first.</param>
/// <param name="ActiveStops">Names of the stops the pose leans on, and of travel limits as typed.</param>
/// <param name="EndsAtNoStop">True when the value gets worse up to a typed end of the travel: the real wheel may go on, and so may the value.</param>
public sealed record WorstPlace(
    double Value,
    ImmutableArray<double> Pose,
    Vector3d First,
    Vector3d Second,
    double StandardUncertainty,
    ImmutableArray<VarianceShare> Shares,
    ImmutableArray<string> ActiveStops,
    bool EndsAtNoStop);

/// <summary>A reading's share of a variance, 0 to 1.</summary>
public sealed record VarianceShare(string Reading, double Share, double HalfWidthMm);
