using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>Where two parts are meant to touch: all over by <c>touches</c>, or near the clips that hold a part on the body of the other.</summary>
public static class MeantContact
{
    /// <summary>True when one part names the other under <c>touches</c>: the pair is not judged.</summary>
    public static bool WholePair(Part first, Part second) => first.Touches.Contains(second.Id) || second.Touches.Contains(first.Id);

    /// <summary>The radius around a part's clips within which contact with parts of its own body is meant, mm; null without clips.</summary>
    public static double? RadiusMm(Part part, ReadOnlySpan<double> parameters) => part.Form is PartForm.Chain { JoinedEnds.IsEmpty: false } chain
        ? Math.Max(Defaults.JoinedEndMm, Defaults.JoinedEndDiameters * chain.OutsideDiameter.At(parameters))
        : null;

    /// <summary>What of a chain is judged against another part that rides on the same body.</summary>
    public static ImmutableArray<CapsuleChain> Judged(Part part, ReadOnlySpan<double> parameters)
    {
        var form = (PartForm.Chain)part.Form;
        CapsuleChain whole = PartSolids.Chain(form, parameters);
        if (RadiusMm(part, parameters) is not { } radius) return [whole];
        var centres = ImmutableArray.CreateBuilder<Vector3d>();
        foreach (int end in form.JoinedEnds) centres.Add(form.Path[end].At(parameters));
        return PartSolids.Outside(whole, centres.ToImmutable(), radius);
    }
}
