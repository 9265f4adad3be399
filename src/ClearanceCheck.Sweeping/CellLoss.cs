namespace ClearanceCheck.Sweeping;

/// <summary>What each coordinate of a cell costs a bound: the rise of the function bounded across the cell, and its curvature, mm.</summary>
internal readonly ref struct CellLoss(Span<double> bound, Span<double> plain)
{
    /// <summary>For the bound with its multipliers.</summary>
    public Span<double> Bound { get; } = bound;

    /// <summary>For the objective alone.</summary>
    public Span<double> Plain { get; } = plain;

    public void CopyTo(CellOutcome outcome)
    {
        Bound.CopyTo(outcome.Loss);
        Plain.CopyTo(outcome.PlainLoss);
    }
}
