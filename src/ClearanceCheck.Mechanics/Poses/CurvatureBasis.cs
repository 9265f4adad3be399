namespace ClearanceCheck.Mechanics.Poses;

/// <summary>What a curvature bound rests on. Ordered: the weaker the larger.</summary>
public enum CurvatureBasis
{
    /// <summary>A closed form, or an interval enclosure of the solved motion.</summary>
    Enclosed,

    /// <summary>Read from the solver at the nodes of a small block and multiplied.</summary>
    Read,

    /// <summary>None can be had for this cell; halve it.</summary>
    Unknown,
}
