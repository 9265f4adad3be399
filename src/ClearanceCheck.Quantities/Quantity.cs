using ClearanceCheck.Kinematics;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities;

/// <summary>Something computed that a rule can limit (VIM, JCGM 200: quantity). One folder and one line in the catalogue each.</summary>
public abstract class Quantity
{
    /// <summary>The word in rules: <c>gap</c>.</summary>
    public abstract string Id { get; }

    /// <summary>Its name in reports.</summary>
    public abstract string Name { get; }

    /// <summary>What it is, in one line.</summary>
    public abstract string Meaning { get; }

    public abstract QuantityUnit Unit { get; }

    /// <summary>True when it belongs to a pair of parts.</summary>
    public abstract bool IsOfPair { get; }

    /// <summary>True when a small value is the bad one.</summary>
    public abstract bool IsWorstWhenLeast { get; }

    /// <summary>True when its two witness points, and the parts there, make a drawing.</summary>
    public virtual bool IsDrawn => true;

    /// <summary>True when its measurement bounds the other side too, in <see cref="Measurement.OtherSide"/>: only then can a limit have two sides, or the other one.</summary>
    public virtual bool BoundsBothSides => false;

    /// <summary>Why it can't be asked of these parts, or null when it can.</summary>
    /// <param name="first">The part, or the first of a pair.</param>
    /// <param name="second">The second of a pair.</param>
    public abstract string? Refuses(Part first, Part? second);

    /// <summary>Which reading it lacks besides the points that every vehicle has, in whole words; null when it lacks none. Rules may be for parts alone of which it was read.</summary>
    /// <param name="motion">The vehicle in motion.</param>
    /// <param name="first">A part that it does not refuse.</param>
    public virtual string? Unread(VehicleMotion motion, Part first) => null;

    /// <summary>The worst value over all reachable poses.</summary>
    public abstract Measurement Measure(MeasureRequest request);

    /// <summary>The value in one pose, or null when the motion can't be solved there.</summary>
    public abstract double? At(MeasureRequest request, ReadOnlySpan<double> pose);
}
