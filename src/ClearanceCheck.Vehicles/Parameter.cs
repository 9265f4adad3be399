namespace ClearanceCheck.Vehicles;

/// <summary>One measured or assumed number of the model, mm.</summary>
/// <param name="Path">Where it stands: <c>axles/rear/points/hub-left.x</c>.</param>
/// <param name="ValueMm">The value the model uses.</param>
/// <param name="HalfWidthMm">Half the interval the true value lies in.</param>
/// <param name="WithinIsAssumed">True when nobody typed the half-width.</param>
public readonly record struct Parameter(string Path, double ValueMm, double HalfWidthMm, bool WithinIsAssumed)
{
    /// <summary>Standard uncertainty of a value that may lie anywhere in its interval: half-width over root three (JCGM 100:2008, 4.3.7; from memory).</summary>
    public double StandardUncertaintyMm => HalfWidthMm / Math.Sqrt(3);

    /// <summary>The path without its axis: what a person calls the reading.</summary>
    public string Reading => Path is [.. var whole, '.', 'x' or 'y' or 'z'] ? whole : Path;
}
