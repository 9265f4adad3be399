using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Quantities.Posed;
using ClearanceCheck.Quantities.Propagation;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Sweeping.Vectors;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.JointAngles;

/// <summary>The joints of a rod: how far the rod leans out of the plane square to the stud, ball or bolt that holds its end.</summary>
/// <remarks>Ball studs, rod ends, shackle bolts and the bolts of bushings cross what they hold; a turn about the stud itself bends nothing (common practice).</remarks>
internal static class StudAngles
{
    /// <summary>What to measure where the direction of no stud is known; null where one is.</summary>
    public static string? NoStuds(Part part, PartForm.Link link) => link is { FirstAxis: null, SecondAxis: null }
        ? $"which way the studs of {part.Name} point is not in the file: measure a point straight ahead of each stud or bolt and type it as `axis-first` and `axis-second`"
        : null;

    /// <summary>The questions of a rod, two for each end whose stud's direction is known: the rod may lean either way along it.</summary>
    public static PosedQuestions Ask(MeasureRequest request, SweepSettings settings)
    {
        (Part part, var link) = (request.First, (PartForm.Link)request.First.Form);
        if (NoStuds(part, link) is { } lack) return PosedQuestions.Lack(lack);
        if (PairPlan.For(request.Motion, link.First.Body, link.Second.Body) is not { } plan)
            return PosedQuestions.Lack($"the ends of {part.Name} ride on two axles, which can't be moved together yet");
        var questions = ImmutableArray.CreateBuilder<PosedQuestion>();
        if (link.FirstAxis is { } first) questions.AddRange(Ends(request, plan, link.First, first, link.Second, settings));
        if (link.SecondAxis is { } second) questions.AddRange(Ends(request, plan, link.Second, second, link.First, settings));
        return PosedQuestions.Of(questions.ToImmutable());
    }

    private static PosedQuestion[] Ends(MeasureRequest request, PairPlan plan, Place end, MeasuredPoint stud, Place other, SweepSettings settings)
    {
        (int body, int far) = (request.Motion.Find(end.Body).Number, request.Motion.Find(other.Body).Number);
        ReadOnlySpan<double> parameters = request.Motion.Parameters.Span;
        Vector3d centre = end.At.At(parameters), axis = stud.At(parameters) - centre, to = other.At.At(parameters);
        return [Towards(1), Towards(-1)];

        PosedQuestion Towards(int sign) => new(
            plan.Module,
            [request.First],
            at => sign * Degrees(at),
            system => VectorSweep.LargestLean(system, body, sign * axis, centre, SweptVector.Between(body, centre, far, to), settings));

        double Degrees(Snapshot at)
        {
            ReadOnlySpan<double> values = at.Parameters.Span;
            Vector3d from = end.At.At(values), along = stud.At(values) - from, line = at.Relative(body, far).Apply(other.At.At(values)) - from;
            return Trigonometry.Atan2(Vector3d.Dot(along, line), Vector3d.Cross(along, line).Length) * Trigonometry.DegreesPerRadian;
        }
    }
}
