using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>What is known already of bodies that drive others: jets for each coordinate of the pose, for each body of the whole.</summary>
internal sealed class DrivenJets<T>(MotionJet<T>[][] jets)
    where T : unmanaged, IReal<T>
{
    /// <summary>For each coordinate, for each body; only those of driven bodies say anything.</summary>
    public MotionJet<T>[][] Jets => jets;

    /// <summary>The bodies' places.</summary>
    public BodyFrame<T>[] Places { get; } = [.. jets[0].Select(j => j.Frame.As(t => t.Value))];

    /// <summary>The bodies' places with their derivatives along one coordinate.</summary>
    public BodyFrame<Taylor2<T>>[] Along(int coordinate) => [.. jets[coordinate].Select(j => j.Frame)];

    /// <summary>Jets of a part of a linkage in the numbers of the whole: what does not move with a coordinate has no derivatives along it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="jets">For each of its coordinates, for each of its bodies.</param>
    /// <param name="bodies">How many bodies the whole has.</param>
    /// <param name="coordinates">How many coordinates the whole has.</param>
    public static DrivenJets<T> Of(LinkagePart part, MotionJet<T>[][] jets, int bodies, int coordinates)
    {
        var all = new MotionJet<T>[coordinates][];
        for (int k = 0; k < coordinates; k++)
        {
            all[k] = new MotionJet<T>[bodies];
            Array.Fill(all[k], MotionJet<T>.Still);
            int own = part.Coordinates.IndexOf(k);
            for (int i = 1; i < part.Bodies.Length; i++) all[k][part.Bodies[i]] = own >= 0 ? jets[own][i] : jets[0][i].Held;
        }

        return new DrivenJets<T>(all);
    }
}
