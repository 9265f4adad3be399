using System.Collections.Immutable;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Quantities.Shapes;
using ClearanceCheck.Sweeping;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>Where two parts are meant to touch: all over by <c>touches</c>, or near the places at which one is joined to the other's body.</summary>
public static class MeantContact
{
    /// <summary>True when one part names the other under <c>touches</c>: their gap is not judged, only how deep they run into each other.</summary>
    public static bool WholePair(Part first, Part second) => first.Touches.Contains(second.Id) || second.Touches.Contains(first.Id);

    /// <summary>The places at which a part is joined to the body that another part is fixed to; empty where it is joined to none.</summary>
    public static ImmutableArray<JoinedPlace> Places(Part part, Part other, ReadOnlySpan<double> parameters)
    {
        if (!other.Form.Ends.IsEmpty) return [];
        var places = ImmutableArray.CreateBuilder<JoinedPlace>();
        switch (part.Form)
        {
            case PartForm.Chain chain when part.Body == other.Body:
                foreach (int end in chain.JoinedEnds)
                    places.Add(new JoinedPlace(part.Body, chain.Path[end].At(parameters), Radius(chain.OutsideDiameter.At(parameters)), "clip"));
                break;
            case PartForm.Coil coil:
                double across = coil.OutsideDiameter.At(parameters) / 2, wire = coil.Wire.At(parameters);
                Add(coil.Lower, Math.Sqrt((across * across) + (4 * wire * wire)), "lower seat", parameters);
                Add(coil.Upper, Math.Sqrt((across * across) + (4 * wire * wire)), "upper seat", parameters);
                break;
            case PartForm.LeafSpring spring:
                Add(spring.FixedEye, Radius(spring.Thickness.At(parameters)), "fixed eye", parameters);
                Add(spring.Seat, (spring.Clamp.At(parameters) / 2) + Defaults.JoinedEndMm, "clamp", parameters);
                Add(spring.ShackleEye, Radius(spring.Thickness.At(parameters)), "shackle eye", parameters);
                break;
            default:
                double thickest = Thickest(part.Form, parameters);
                for (int i = 0; i < part.Form.Ends.Length; i++) Add(part.Form.Ends[i], Radius(thickest), EndWords(part.Form, i), parameters);
                break;
        }

        return places.ToImmutable();

        void Add(Place place, double radius, string words, ReadOnlySpan<double> values)
        {
            if (place.Body == other.Body) places.Add(new JoinedPlace(place.Body, place.At.At(values), radius, words));
        }
    }

    /// <summary>What of a part's shape is judged against another part: its members without what lies near its joined places; null for a member of which nothing is left.</summary>
    public static ImmutableArray<ShapeMember?> Judged(Part part, Part other, VehicleMotion motion, ReadOnlySpan<double> parameters)
    {
        ImmutableArray<ShapeMember> whole = PartShapes.Of(part, motion, parameters);
        ImmutableArray<JoinedPlace> places = WholePair(part, other) ? [] : Places(part, other, parameters);
        return [.. whole.Select(m => places.IsEmpty ? m : Cut(m, places))];
    }

    private static string EndWords(PartForm form, int end) => form is PartForm.Shock ? (end == 0 ? "upper mount" : "lower mount") : end == 0 ? "first end" : "second end";

    private static double Radius(double diameterMm) => Math.Max(Defaults.JoinedEndMm, Defaults.JoinedEndDiameters * diameterMm);

    private static double Thickest(PartForm form, ReadOnlySpan<double> parameters) => form switch
    {
        PartForm.Link link => link.OutsideDiameter.At(parameters),
        PartForm.Shock { Sleeves: { } sleeves } => sleeves.TubeDiameter.At(parameters),
        PartForm.Shaft shaft => shaft.Sleeves.TubeDiameter.At(parameters),
        _ => 0,
    };

    private static ShapeMember? Cut(ShapeMember member, ImmutableArray<JoinedPlace> places)
    {
        SweptSolid? left = member.Swept switch
        {
            RigidSolid { Solid: CapsuleChain chain } rigid => ChainCut.Outside(chain, places) is { } rest ? rigid with { Solid = rest } : null,
            RigidSolid { Solid: Plank plank } rigid => Outside(plank, places) is { } rest ? rigid with { Solid = rest } : null,
            BlendedChain wire => Outside(wire, places),
            _ => member.Swept,
        };
        return left is null ? null : member with { Swept = left };
    }

    // From the first to the last place of its line outside all balls: what lies between two such places stays.
    private static Plank? Outside(Plank plank, ImmutableArray<JoinedPlace> places)
    {
        List<(double From, double To)> open = ChainCut.OutsideParts(plank.From, plank.To, places);
        return open.Count == 0 ? null : plank.Between(open.Min(o => o.From), open.Max(o => o.To));
    }

    // Shares grow along each helix, so what is near a seat is cut where the wire begins and ends: the points in between stay.
    private static BlendedChain? Outside(BlendedChain wire, ImmutableArray<JoinedPlace> places)
    {
        int[] kept = [.. Enumerable.Range(0, wire.Points.Length).Where(i => places.All(p => (wire.Points[i] - p.At).Length > p.RadiusMm))];
        return kept.Length == 0 ? null : wire with { Points = [.. kept.Select(i => wire.Points[i])], Shares = [.. kept.Select(i => wire.Shares[i])] };
    }
}
