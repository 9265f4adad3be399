using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Sweeping;

namespace ClearanceCheck.Quantities.Posed;

/// <summary>A quantity of one part that is the worst answer to a few questions, each a function of the pose.</summary>
public abstract class PosedQuantity : Quantity
{
    public override bool IsOfPair => false;

    public override bool IsDrawn => false;

    /// <summary>Places within this of the worst are kept, and the search ends within a tenth of it: in the quantity's unit.</summary>
    private protected virtual double Reach => Unit == QuantityUnit.Degree ? 1 : 5;

    private protected abstract PosedQuestions Ask(MeasureRequest request);

    public sealed override Measurement Measure(MeasureRequest request)
    {
        PosedQuestions asked = Ask(request);
        if (asked.Missing is { } missing) return new Measurement { NotEvaluated = missing };
        Measurement? worst = null;
        foreach (PosedQuestion question in asked.Questions)
        {
            Measurement own = Measure(request, question);
            if (own.NotEvaluated is not null) return own;
            worst = worst is null ? own : Worse(worst, own);
        }

        // What bounds both sides is one value of one pose: the most and the least of it are the same.
        return BoundsBothSides && worst is not null ? worst with { OtherSide = worst } : worst!;
    }

    public sealed override double? At(MeasureRequest request, ReadOnlySpan<double> pose)
    {
        PosedQuestions asked = Ask(request);
        if (asked.Missing is not null) return null;
        double worst = double.NaN;
        // Of a quantity with a set of poses for each way, such as up and down, a pose is on one of the ways: the one that it has gone.
        int sign = asked.Questions.Any(q => q.Over is not null) ? -Sign : Sign;
        foreach (PosedQuestion question in asked.Questions)
        {
            SolvedPose? solved = question.Module is null || pose.IsEmpty ? null : question.Module.Motion.At(pose);
            if (solved is { IsSolved: false }) return null;
            double value = question.Value(new Snapshot(request.Motion.Parameters, solved is null ? null : question.Module, solved));
            if (!(value * sign >= worst * sign)) worst = value;
        }

        return double.IsFinite(worst) ? worst : null;
    }

    /// <summary>Settings of a search in the quantity's own unit.</summary>
    private protected SweepSettings Settings(double ceiling = double.PositiveInfinity) =>
        new() { ToleranceMm = Reach / 10, ReachMm = Reach, CeilingMm = ceiling, MaximumCells = 60_000 };

    private int Sign => IsWorstWhenLeast ? 1 : -1;

    private Measurement Measure(MeasureRequest request, PosedQuestion question)
    {
        SearchedSet found = Search(request, question);
        if (found.Extreme.IsProvedEmpty) return new Measurement { NotEvaluated = $"no pose can be reached {PoseSetWords.Where(question.Over ?? request.Over)}", Module = question.Module };
        return ExtremeMeasurement.Of(
            request, new PairPlan(question.Module), found.Extreme, question.Parts, value => value, (at, _) => Sign * question.Value(at), question.Also, found.Subsets, question.IsKinked);
    }

    private SearchedSet Search(MeasureRequest request, PosedQuestion question)
    {
        if (question.Module is not { } module) return Single(question.Value(new Snapshot(request.Motion.Parameters, null, null)), []);
        if (question.OnlyPose is { } only)
        {
            SolvedPose at = module.Motion.At(only.AsSpan());
            return at.IsSolved ? Single(question.Value(new Snapshot(request.Motion.Parameters, module, at)), only) : Single(double.NaN, only);
        }

        return SetSearch.Run(request with { Over = question.Over ?? request.Over }, module, IsWorstWhenLeast, Reach, question.Search!, question.Held);
    }

    // One pose has no shape of its own to be drawn beside the parts.
    private static SearchedSet Single(double value, ImmutableArray<double> pose) => new(
        new Extreme { Value = value, Bound = value, Grade = Grade.Proven, Basins = [new Basin(value, pose, new Witness(0, 0, Vector3d.Zero, Vector3d.Zero))], Cells = 0 },
        [new PoseSubset { Held = [.. pose.Select((at, d) => new Sweeping.Subspaces.HeldCoordinate(d, at))] }]);

    private Measurement Worse(Measurement one, Measurement other)
    {
        (Measurement worse, Measurement better) = Sign * one.Value <= Sign * other.Value ? (one, other) : (other, one);
        return worse with
        {
            Bound = Sign * Math.Min(Sign * one.Bound, Sign * other.Bound),
            Grade = (Grade)Math.Max((int)one.Grade, (int)other.Grade),
            Places = [.. worse.Places.Concat(better.Places.Where(p => Sign * p.Value <= (Sign * worse.Value) + Reach)).OrderBy(p => Sign * p.Value)],
            Cells = one.Cells + other.Cells,
            RefusedAtRoot = one.RefusedAtRoot && other.RefusedAtRoot,
            BudgetSpent = one.BudgetSpent || other.BudgetSpent,
            Module = worse.Module ?? better.Module,
        };
    }
}
