using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>What ends an axle's travel and steering.</summary>
internal static class AxleStops
{
    public static ImmutableArray<Stop> Of(
        Vehicle vehicle, Axle axle, ImmutableArray<string> bodies, SteeringLinkage? steering, ReadOnlyMemory<double> parameters) =>
        [.. vehicle.Parts.SelectMany(part => Of(vehicle, part, bodies, parameters)), .. BoxEnd(axle, bodies, steering, parameters.Span)];

    /// <summary>The number of a body among an axle's; 0 for the chassis and what is fixed to it, below zero for another axle's.</summary>
    public static int Number(Vehicle vehicle, ImmutableArray<string> bodies, string body) => vehicle.FixedBodies.Contains(body) ? 0 : bodies.IndexOf(body);

    private static IEnumerable<Stop> Of(Vehicle vehicle, Part part, ImmutableArray<string> bodies, ReadOnlyMemory<double> parameters)
    {
        switch (part.Form)
        {
            case PartForm.Shock shock when Numbers(shock.Upper, shock.Lower) is var (upper, lower):
                double open = shock.Open.At(parameters.Span) + (2 * Defaults.ShockBushingMm);
                double closed = shock.Closed.At(parameters.Span) - (2 * Defaults.ShockBushingMm);
                yield return new LongestStop($"{part.Id} at full length", upper, At(shock.Upper), lower, At(shock.Lower), open);
                yield return new ShortestStop($"{part.Id} bottomed", upper, At(shock.Upper), lower, At(shock.Lower), closed);
                break;
            case PartForm.BumpStop stop when Numbers(stop.Frame, stop.Axle) is var (frame, axle):
                double least = stop.Height.At(parameters.Span) - stop.Crush.At(parameters.Span);
                yield return new HeightStop($"{part.Id} crushed", frame, At(stop.Frame), axle, At(stop.Axle), Vector3d.UnitZ, least);
                break;
            case PartForm.LimitStrap strap when Numbers(strap.Upper, strap.Lower) is var (upper, lower):
                double taut = strap.Length.At(parameters.Span) + strap.Stretch.At(parameters.Span);
                yield return new LongestStop($"{part.Id} taut", upper, At(strap.Upper), lower, At(strap.Lower), taut);
                break;
            case PartForm.SteeringStop stop when Numbers(stop.First, stop.Second) is var (first, second):
                Vector3d towards = (At(stop.First) - At(stop.Second)).NormalizedOr(Vector3d.UnitX);
                yield return new HeightStop($"{part.Id} touching", first, At(stop.First), second, At(stop.Second), towards, -Defaults.SteeringStopMm);
                break;
            case PartForm.Coil { SolidHeight: { } solid } coil when Numbers(coil.Lower, coil.Upper) is var (lower, upper):
                yield return new ShortestStop($"{part.Id} solid", lower, At(coil.Lower), upper, At(coil.Upper), solid.At(parameters.Span));
                break;
        }

        Vector3d At(Place place) => place.At.At(parameters.Span);

        // A stop of this axle has one end on it; its other end is on the chassis or on another of its bodies.
        (int First, int Second)? Numbers(Place first, Place second)
        {
            int a = Number(vehicle, bodies, first.Body), b = Number(vehicle, bodies, second.Body);
            return a < 0 || b < 0 || a == b ? null : (a, b);
        }
    }

    // The pitman arm's end may come no farther from where it was measured than the chord of the box's turn.
    private static IEnumerable<Stop> BoxEnd(Axle axle, ImmutableArray<string> bodies, SteeringLinkage? steering, ReadOnlySpan<double> parameters)
    {
        if (axle.Steering?.BoxEndRad is not { } turn || steering?.PitmanEnd is not { } name) return [];
        Vector3d end = axle.Points[name].At(parameters), pivot = axle.Points["pitman-pivot"].At(parameters);
        Vector3d shaft = (axle.Points["pitman-axis"].At(parameters) - pivot).NormalizedOr(Vector3d.UnitZ), arm = end - pivot;
        double radius = (arm - (Vector3d.Dot(arm, shaft) * shaft)).Length;
        int pitman = bodies.IndexOf($"{axle.Name}/pitman-arm");
        return [new LongestStop($"end of the {axle.Name} steering box", 0, end, pitman, end, 2 * radius * Trigonometry.SinCos(turn / 2).Sin)];
    }
}
