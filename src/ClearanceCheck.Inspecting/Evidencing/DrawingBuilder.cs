using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Evidencing;

/// <summary>Parts posed, as chains of thick line in the vehicle frame.</summary>
internal sealed class DrawingBuilder(VehicleMotion motion)
{
    public DrawingCard Draw(ImmutableArray<Part> parts, AxleModule? module, ImmutableArray<double> pose)
    {
        SolvedPose? solved = module?.Motion.At(pose.AsSpan());
        return new DrawingCard([.. parts.Select(part => Drawn(part, solved))]);
    }

    private DrawnPart Drawn(Part part, SolvedPose? solved) => part.Form switch
    {
        PartForm.Chain chain => new DrawnPart(
            part.Id, [.. chain.Path.Select(p => Posed(part.Body, p, solved))], chain.OutsideDiameter.At(motion.Parameters.Span) / 2, false),
        PartForm.Hose hose => new DrawnPart(
            part.Id, [Posed(hose.Upper, solved), Posed(hose.Lower, solved)], hose.OutsideDiameter.At(motion.Parameters.Span) / 2, true),
        PartForm.Shock shock => new DrawnPart(part.Id, [Posed(shock.Upper, solved), Posed(shock.Lower, solved)], 0, true),
        PartForm.BumpStop stop => new DrawnPart(part.Id, [Posed(stop.Frame, solved), Posed(stop.Axle, solved)], 0, true),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private Vector3d Posed(Place place, SolvedPose? solved) => Posed(place.Body, place.At, solved);

    private Vector3d Posed(string body, MeasuredPoint point, SolvedPose? solved)
    {
        Vector3d at = point.At(motion.Parameters.Span);
        int number = motion.Find(body).Number;
        return solved is null || number == 0 ? at : solved[number].Apply(at);
    }
}
