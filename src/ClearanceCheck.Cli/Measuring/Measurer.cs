using System.Collections.Immutable;
using ClearanceCheck.Cli.Inputs;
using ClearanceCheck.Cli.Poses;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities;
using ClearanceCheck.Quantities.Gaps;
using ClearanceCheck.Quantities.Sets;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Cli.Measuring;

/// <summary>Measures a quantity without any rule.</summary>
internal sealed class Measurer(VehicleMotion motion, Quantity quantity, PoseSet over)
{
    /// <summary>How many of the worst are listed.</summary>
    public const int MostListed = 10;

    /// <summary>The worst value over all reachable poses.</summary>
    public MeasuredSubject Worst(Part first, Part? second, double ceiling = double.PositiveInfinity)
    {
        Measurement worst = quantity.Measure(new MeasureRequest(motion, first, second, ceiling) { Over = over });
        if (worst.NotEvaluated is { } why) return new MeasuredSubject { First = first, Second = second, Answer = "not-evaluated", NotEvaluated = why, Worst = worst };
        WorstPlace place = worst.Places[0];
        return new MeasuredSubject
        {
            First = first,
            Second = second,
            Answer = "solved",
            Value = worst.Value,
            Worst = worst,
            Pose = Named(worst.Module, place.Pose),
            Stops = place.ActiveStops,
        };
    }

    /// <summary>The value in one pose.</summary>
    public MeasuredSubject At(Part first, Part? second, PoseTyped pose)
    {
        var none = new MeasuredSubject { First = first, Second = second, Answer = "not-evaluated" };
        AxleModule[] modules = [.. motion.CarriersOf(first).Concat(second is null ? [] : motion.CarriersOf(second)).Select(b => motion.Find(b).Module).OfType<AxleModule>().Distinct()];
        if (modules.Length > 1) return none with { NotEvaluated = "the parts ride on two axles, which can't be moved together yet" };
        var request = new MeasureRequest(motion, first, second, double.PositiveInfinity);
        if (modules.Length == 0) return Valued(none with { Answer = "solved" }, quantity.At(request, []));
        PoseAnswer answer = PoseAnswer.Of(modules[0], pose);
        MeasuredSubject asked = none with { Answer = answer.Word, Pose = Named(modules[0], answer.Pose), Stops = answer.StoppedBy };
        return answer.Solved.IsSolved
            ? Valued(asked, quantity.At(request, answer.Pose.AsSpan()))
            : asked with { NotEvaluated = "the axle's place in this pose is not known" };
    }

    /// <summary>The worst of all parts, or pairs, that the quantity can be asked of, the worst first; those without a value after them.</summary>
    public ImmutableArray<MeasuredSubject> Closest(IProgress<(int Done, int Of)> progress)
    {
        (Part First, Part? Second)[] subjects = [.. Subjects()];
        var kept = new List<MeasuredSubject>();
        var unknown = new List<MeasuredSubject>();
        for (int i = 0; i < subjects.Length; i++)
        {
            MeasuredSubject measured = Worst(subjects[i].First, subjects[i].Second, Ceiling(kept));
            if (measured.Value is null) unknown.Add(measured);
            else Keep(kept, measured);
            progress.Report((i + 1, subjects.Length));
        }

        return [.. kept, .. unknown];
    }

    /// <summary>The worst of all parts, or pairs, in one pose.</summary>
    public ImmutableArray<MeasuredSubject> ClosestAt(PoseTyped pose)
    {
        var kept = new List<MeasuredSubject>();
        MeasuredSubject[] all = [.. Subjects().Select(s => At(s.First, s.Second, pose))];
        foreach (MeasuredSubject measured in all.Where(m => m.Value is not null)) Keep(kept, measured);
        return [.. kept, .. all.Where(m => m.Value is null)];
    }

    private void Keep(List<MeasuredSubject> kept, MeasuredSubject measured)
    {
        int sign = quantity.IsWorstWhenLeast ? 1 : -1;
        int place = kept.FindIndex(k => sign * k.Value > sign * measured.Value);
        kept.Insert(place < 0 ? kept.Count : place, measured);
        if (kept.Count > MostListed) kept.RemoveAt(MostListed);
    }

    // Once the list is full, what is farther than its last needs no closer look.
    private double Ceiling(List<MeasuredSubject> kept) =>
        kept.Count == MostListed && quantity is { IsWorstWhenLeast: true, Unit: QuantityUnit.Millimetre } ? kept[^1].Value!.Value : double.PositiveInfinity;

    private IEnumerable<(Part First, Part? Second)> Subjects()
    {
        ImmutableArray<Part> parts = motion.Vehicle.Parts;
        if (!quantity.IsOfPair) return parts.Where(p => quantity.Refuses(p, null) is null).Select(p => (p, (Part?)null));
        return from i in Enumerable.Range(0, parts.Length)
               from j in Enumerable.Range(i + 1, parts.Length - i - 1)
               where quantity.Refuses(parts[i], parts[j]) is null && !MeantContact.WholePair(parts[i], parts[j])
               select (parts[i], (Part?)parts[j]);
    }

    private static MeasuredSubject Valued(MeasuredSubject asked, double? value) =>
        value is { } number && double.IsFinite(number)
            ? asked with { Value = number }
            : asked with { Answer = "not-evaluated", NotEvaluated = "all of one part lies within the zone in which it is meant to touch" };

    private static ImmutableArray<ShownCoordinate> Named(AxleModule? module, ImmutableArray<double> pose) =>
        module is null ? [] : [.. module.Motion.Box.Coordinates.Zip(pose, ShownCoordinate.Of)];
}
