using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Files.Wheels;

/// <summary>Takes the swept radius and width of a tire into the parameter vector, and lists every term of them.</summary>
internal static class TireFigures
{
    private const string Practice = "common practice, no source";

    public static TireSolid Place(string path, TireDescription tire, double? within, VehicleDraft draft)
    {
        var envelope = new TireEnvelope(
            tire.Size?.Value, Mm(tire.Circumference), Mm(tire.Width), Mm(tire.RimWidth), Mm(tire.Chains) ?? 0);
        Within tape = Within.For(within, draft.FileWithin, Defaults.TapeMm, "a tape reading");
        var solid = new TireSolid(Radius($"{path}/tire-radius", tire, envelope, tape, draft), Width($"{path}/tire-width", tire, envelope, tape, draft), tire.RimDiameterMm / 2);
        if (tire.Chains is { } chains) draft.Assume($"{path}/chains", $"Chains add {Text(envelope.ChainsMm)} all around, typed as {chains.Span.Text}; where they lie on the tire is not told apart.");
        if (tire.RimWidth is null && tire.Size is { } size && tire.Width is null)
            draft.Assume($"{path}/rim-width", $"Rim width not typed: taken as the usual one for {size.Span.Text}, {Text(size.Value.MeasuringRimWidthMm)}.");
        return solid;
    }

    private static MeasuredLength Radius(string path, TireDescription tire, TireEnvelope envelope, Within tape, VehicleDraft draft)
    {
        draft.Assume(path, $"Swept radius {Text(envelope.RadiusMm)}: {Text(envelope.NominalRadiusMm)} as new, and what is listed with it.");
        Term(path, "tolerance", envelope.RadiusToleranceMm, "a new tire larger than its size by 4 % of its section height (UN R30, from memory)", draft);
        Term(path, "growth", envelope.RadiusGrowthMm, $"growth in use: 1 % of the radius ({Practice})", draft);
        Term(path, "runout", envelope.RunoutMm, "runout of tire and rim: half of 1/8 in (49 CFR 570.10(b))", draft);
        if (tire.Circumference is { } around)
        {
            // What is swept grows with what was measured, and so does what is not known of it.
            double grown = 1 + (envelope.RadiusGrowthMm / envelope.NominalRadiusMm);
            double half = grown * Math.Max(tape.HalfWidthMm, around.Value.HalfStepMm) / (2 * Math.PI);
            return draft.Derived(path, $"{around.Span.Text} around", around.Span, envelope.RadiusMm, tape with { HalfWidthMm = half, Why = "a tape reading around the tire" });
        }

        return draft.Derived(path, tire.Size!.Span.Text, tire.Size.Span, envelope.RadiusMm, Sizes.Default);
    }

    private static MeasuredLength Width(string path, TireDescription tire, TireEnvelope envelope, Within tape, VehicleDraft draft)
    {
        draft.Assume(path, $"Swept width {Text(envelope.WidthMm)}: {Text(envelope.NominalWidthMm)} as new on its rim, and what is listed with it.");
        Term(path, "tolerance", envelope.WidthToleranceMm, $"a new tire wider than its size by {NumberFormat.UpTo(envelope.WidthTolerancePercent, 0)} % of its section width (UN R30, from memory)", draft);
        Term(path, "growth", envelope.WidthGrowthMm, $"growth in use: 2 % of the width ({Practice})", draft);
        Term(path, "runout", 2 * envelope.RunoutMm, "runout of tire and rim on both sides: half of 1/8 in each (49 CFR 570.10(b))", draft);
        if (tire.Width is { } measured)
        {
            double grown = 1 + (envelope.WidthGrowthMm / envelope.NominalWidthMm);
            return draft.Derived(path, measured.Span.Text, measured.Span, envelope.WidthMm, tape with { HalfWidthMm = grown * Math.Max(tape.HalfWidthMm, measured.Value.HalfStepMm) });
        }

        return draft.Derived(path, tire.Size!.Span.Text, tire.Size.Span, envelope.WidthMm, Sizes.Default);
    }

    private static void Term(string path, string term, double mm, string why, VehicleDraft draft)
    {
        if (mm > 0) draft.Assume($"{path}/{term}", $"{Text(mm)} for {why}.");
    }

    private static double? Mm(Placed<LengthReading>? typed) => typed?.Value.Length.Millimetres;

    private static string Text(double mm) => NumberFormat.UpTo(mm, 1) + " mm";
}
