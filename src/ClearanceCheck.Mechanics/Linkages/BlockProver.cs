using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Proves blocks of a linkage's pose box: at once, or what others drive after what drives it.</summary>
internal sealed class BlockProver(LinkageMotion motion)
{
    // Derivatives are bounded over parts of a block about this wide, with a seam that overlaps; large systems over fewer.
    private const double PartMm = 15;
    private const double PartRad = 0.1;
    private const int ManyUnknowns = 16;
    private const double SeamMm = 1e-9;

    /// <summary>Tries the proof; null when it fails.</summary>
    /// <param name="block">The block.</param>
    /// <param name="centre">The bodies at its centre.</param>
    /// <param name="loosest">See <see cref="Enclosure.TryProve"/>.</param>
    public ProvedBlock? TryProve(in DyadicCell block, RigidMotion[] centre, double loosest)
    {
        int d = motion.Box.Dimensions;
        double[] settings = new double[d], halves = new double[d];
        motion.Box.Values(block.Center(d), settings);
        for (int k = 0; k < d; k++) halves[k] = block.Width(k, motion.Box) / 2;
        if (motion.Stages is { } stages) return TryProveDriven(stages, block, centre, settings, halves, loosest);
        Enclosure? proof = Enclosure.TryProve(motion.Linkage, centre, settings, halves, loosest);
        return proof is null ? null : new ProvedBlock(proof, () => [.. Divided(settings, halves, Counts(halves)).Select(part => new ProvedPart(part, (proof.Over(settings, part) ?? proof).Jets))]);
    }

    private ProvedBlock? TryProveDriven(LinkageStages stages, in DyadicCell block, RigidMotion[] centre, double[] settings, double[] halves, double loosest)
    {
        if (stages.DriverOver(block, settings, centre) is not { } driver) return null;
        Enclosure? proof = Enclosure.TryProve(stages.Rest, centre, settings, halves, loosest, (driver.Centre, driver.Over));
        return proof is null ? null : new ProvedBlock(proof, () => [.. DrivenParts(stages, driver, proof, settings, halves)]);
    }

    // Each part of the driver's by parts of the coordinates that the rest has alone.
    private IEnumerable<ProvedPart> DrivenParts(LinkageStages stages, DriverBlock driver, Enclosure proof, double[] settings, double[] halves)
    {
        int[] counts = Counts(halves);
        foreach (int k in stages.Part.Coordinates) counts[k] = 1;
        foreach ((Interval[] over, DrivenJets<Interval> jets) in driver.Parts)
            foreach (Interval[] part in Divided(settings, halves, counts))
            {
                for (int i = 0; i < over.Length; i++) part[stages.Part.Coordinates[i]] = over[i];
                yield return new ProvedPart(part, (proof.Over(settings, part, jets) ?? proof).Jets);
            }
    }

    // Intervals lose with the square of their width, and what a follower's direction adds shrinks only as the block does.
    private int[] Counts(double[] halves)
    {
        int unknowns = motion.Stages?.Rest.Unknowns ?? motion.Linkage.Unknowns, most = halves.Length > 2 || unknowns > ManyUnknowns ? 2 : 4;
        return [.. halves.Select((h, k) => Math.Clamp((int)Math.Ceiling(2 * h / (motion.Box.Coordinates[k].IsAngle ? PartRad : PartMm)), 1, most))];
    }

    private static IEnumerable<Interval[]> Divided(double[] centre, double[] halves, int[] counts)
    {
        int parts = 1;
        foreach (int count in counts) parts *= count;
        for (int i = 0; i < parts; i++)
        {
            var part = new Interval[counts.Length];
            for (int k = 0, rest = i; k < part.Length; rest /= counts[k], k++)
            {
                double width = 2 * halves[k] / counts[k], low = centre[k] - halves[k] + (width * (rest % counts[k]));
                // Rounding must leave no gap between one part and the next.
                part[k] = new Interval(low - SeamMm, low + width + SeamMm);
            }

            yield return part;
        }
    }
}
