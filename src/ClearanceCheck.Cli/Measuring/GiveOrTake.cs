using ClearanceCheck.Quantities;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>What is said as "give or take": two standard uncertainties, as inspections say by default.</summary>
internal static class GiveOrTake
{
    public static double Of(Measurement worst) => MeasureRequest.UsualCoverageFactor * worst.Places[0].StandardUncertainty;
}
