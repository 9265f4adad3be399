using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The two axes of a plot: the coordinate to the right, the quantity up.</summary>
internal sealed record PlotScale(double Lowest, double Highest, double ValueLow, double ValueHigh, double Step, double Left, double Right, double Top, double Bottom)
{
    private const int WantedSteps = 4;

    /// <summary>The values shown reach this many times as far beyond the limit as the worst value is from it: what matters lies there.</summary>
    private const double Beyond = 1.6;

    /// <param name="worst">The extreme found; the values far on its good side are left out of the picture.</param>
    public static PlotScale Of(PlotCard plot, LimitCard limitCard, double worst, double giveOrTake, PlotFrame frame)
    {
        (double left, double right, double top, double bottom) = frame;
        double limit = limitCard.AtLeast ?? limitCard.AtMost ?? 0;
        double reach = Beyond * Math.Max(Math.Abs(worst - limit), Math.Max(3 * giveOrTake, 0.25 * Math.Abs(limit)));
        double low = Math.Min(plot.Points.Min(p => p.Value) - giveOrTake, limit);
        double high = Math.Max(plot.Points.Max(p => p.Value) + giveOrTake, limit);
        if (limitCard.AtLeast is not null) high = Math.Min(high, Math.Max(limit, worst) + reach);
        else low = Math.Max(low, Math.Min(limit, worst) - reach);
        double step = NiceStep.AtLeast(Math.Max(high - low, 1e-6) / WantedSteps);
        return new PlotScale(plot.Points.Min(p => p.At), plot.Points.Max(p => p.At), Math.Floor(low / step) * step, Math.Ceiling((high / step) + 0.15) * step, step, left, right, top, bottom);
    }

    public PagePoint At(double coordinate, double value)
    {
        double width = Highest - Lowest;
        double x = width > 0 ? Left + ((coordinate - Lowest) / width * (Right - Left)) : (Left + Right) / 2;
        return new PagePoint(x, Bottom - ((value - ValueLow) / (ValueHigh - ValueLow) * (Bottom - Top)));
    }

    public IEnumerable<double> ValueTicks()
    {
        int count = (int)Math.Round((ValueHigh - ValueLow) / Step);
        for (int i = 0; i <= count; i++) yield return ValueLow + (i * Step);
    }
}
