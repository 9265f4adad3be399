using System.Collections.Immutable;

namespace ClearanceCheck.Quantities.Propagation;

/// <summary>How uncertain a least value is at its pose, and what the pose leans on.</summary>
/// <param name="StandardUncertainty">In the value's unit.</param>
/// <param name="Shares">Readings by their share of the variance, the largest first.</param>
/// <param name="ActiveStops">Names of the stops that hold the pose, then of the typed ends of the travel that do.</param>
/// <param name="EndsAtNoStop">True when the value gets worse up to a typed end of the travel.</param>
public sealed record PoseUncertainty(
    double StandardUncertainty, ImmutableArray<VarianceShare> Shares, ImmutableArray<string> ActiveStops, bool EndsAtNoStop);
