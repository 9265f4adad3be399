using ClearanceCheck.Files.States;

namespace ClearanceCheck.Files.Mirroring;

/// <summary>Whether an axle stood level enough for one side to be the mirror image of the other.</summary>
internal static class AxleTilt
{
    /// <summary>Half of how much lower one wheel stood than the other is what an image at the hub is off by: it has to lie within the mirror's give or take.</summary>
    public static void Check(Mirror mirror, string axle, string state, VehicleDraft draft)
    {
        double offMm = Math.Abs(AxleTies.TiltMm(axle, state, draft)) / 2;
        if (offMm > mirror.HalfWidthMm) FileMessages.MirrorOfTilted(mirror, axle, state, 2 * offMm, offMm);
    }
}
