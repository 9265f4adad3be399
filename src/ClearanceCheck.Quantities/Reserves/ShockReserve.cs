using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Reserves;

/// <summary>What is left of a shock's length in a pose space that no shock ends.</summary>
internal static class ShockReserve
{
    /// <summary>What is left of a shock, given its length from mount to mount and parameter values.</summary>
    public delegate double Left(PartForm.Shock shock, ReadOnlySpan<double> parameters, double chordMm);

    /// <param name="request">What is asked.</param>
    /// <param name="left">What is left at a length.</param>
    /// <param name="settings">Of the search.</param>
    /// <param name="isShortest">True when least is left at the shortest length, false at the longest.</param>
    public static PosedQuestions Ask(MeasureRequest request, Left left, SweepSettings settings, bool isShortest)
    {
        (Part part, VehicleMotion motion) = (request.First, request.Motion);
        var shock = (PartForm.Shock)part.Form;
        if (PairPlan.For(motion, shock.Upper.Body, shock.Lower.Body) is not { } plan)
            return PosedQuestions.Lack($"the ends of {part.Name} ride on two axles, which can't be moved together yet");
        if (plan.Module is not { } module) return PosedQuestions.Lack($"both ends of {part.Name} are on one body: it never changes its length");
        (int upper, int lower) = (motion.Find(shock.Upper.Body).Number, motion.Find(shock.Lower.Body).Number);
        Vector3d from = shock.Upper.At.At(motion.Parameters.Span), to = shock.Lower.At.At(motion.Parameters.Span);
        return PosedQuestions.Of(new PosedQuestion(
            module,
            [part],
            at => left(shock, at.Parameters.Span, Chord(at)),
            system => Lengths.From(
                isShortest ? VectorSweep.ShortestChord(system, upper, from, lower, to, settings) : Sweep.LongestChord(system, upper, from, lower, to, settings),
                chord => left(shock, motion.Parameters.Span, chord)))
        {
            Held = new PoseSubset { WithoutStops = PoseSubsets.OfShocks(module, motion.Vehicle) },
        });

        double Chord(Snapshot at) => (at.Relative(upper, lower).Apply(shock.Lower.At.At(at.Parameters.Span)) - shock.Upper.At.At(at.Parameters.Span)).Length;
    }
}
