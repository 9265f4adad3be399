namespace ClearanceCheck.Sweeping;

/// <summary>What looking at one cell gave.</summary>
internal sealed class CellOutcome
{
    /// <summary>No pose of the cell has a smaller objective, as far as the features still open are concerned.</summary>
    public double Bound { get; set; }

    /// <summary>The lowest bound among features that this cell settled: its halves never see them again.</summary>
    public double Settled { get; set; }

    /// <summary>The objective at the cell's centre where it was measured; infinite where a bound made that needless.</summary>
    public double CentreValue { get; set; }

    public Witness CentreWitness { get; set; }

    /// <summary>For the lowest open feature, what each coordinate costs the bound.</summary>
    public double[] Loss { get; } = new double[Mechanics.Poses.PoseBox.MaximumDimensions];

    /// <summary>The same without the stops' help.</summary>
    public double[] PlainLoss { get; } = new double[Mechanics.Poses.PoseBox.MaximumDimensions];

    /// <summary>Features that go on to the cell's halves.</summary>
    public List<OpenFeature> Open { get; } = [];

    public void Clear()
    {
        Bound = Settled = CentreValue = double.PositiveInfinity;
        Array.Clear(Loss);
        Array.Clear(PlainLoss);
        Open.Clear();
    }
}
