using ClearanceCheck.Quantities;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>What is said as "give or take": two standard uncertainties, as inspections say by default.</summary>
internal static class GiveOrTake
{
    private const double CoverageFactor = 2;

    public static double Of(Measurement worst) => CoverageFactor * worst.Places[0].StandardUncertainty;
}
