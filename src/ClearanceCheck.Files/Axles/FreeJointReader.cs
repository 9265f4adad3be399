using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads a joint of a free layout.</summary>
internal static class FreeJointReader
{
    private static readonly Dictionary<string, FreeJointKind> Kinds = new(StringComparer.Ordinal)
    {
        ["rod"] = FreeJointKind.Rod,
        ["ball"] = FreeJointKind.Ball,
        ["hinge"] = FreeJointKind.Hinge,
        ["slide"] = FreeJointKind.Slide,
        ["spring"] = FreeJointKind.Spring,
        ["bushing"] = FreeJointKind.Bushing,
    };

    public static FreeJoint? Read(MappingReader reader, string axle, string name, ImmutableArray<string> bodies, Within within, VehicleDraft draft)
    {
        Placed<FreeJointKind>? kind = reader.Required("kind", "rod, ball, hinge, slide, spring or bushing").Choice(Kinds);
        Field between = reader.Required("between", "the two bodies it joins; of a bushing the first one carries the housing");
        IReadOnlyList<Field>? pair = between.Items(2);
        (Placed<string>? first, Placed<string>? second) = (pair?[0].Word(bodies), pair?[1].Word(bodies));
        bool joins = first is not null && second is not null;
        if (joins && first!.Value == second!.Value)
        {
            FileMessages.JoinedToItself(between, first.Value);
            joins = false;
        }

        Field at = reader.Required("at", "its place: one point in a list, for a rod or spring one on each body in the order of `between`");
        IReadOnlyList<Placed<LengthTriple>>? points = at.Triples()?.Value;
        if (kind is null)
        {
            reader.AllowAll();
            return null;
        }

        string path = $"axles/{axle}/joints/{name}";
        bool hasLine = kind.Value is FreeJointKind.Hinge or FreeJointKind.Slide;
        Field axisField = hasLine ? reader.Required("axis", $"a second point on the line of the {Word(kind.Value)}") : default;
        Placed<LengthTriple>? axis = axisField.Triple();
        SoftJoint? soft = SoftJoint.Read(reader, kind.Value);
        int needed = kind.Value is FreeJointKind.Rod or FreeJointKind.Spring ? 2 : 1;
        bool isPlaced = points is not null && points.Count == needed;
        if (points is not null && !isPlaced) FileMessages.PointsOfJoint(at, kind.Value, needed, points.Count);
        if (!joins || !isPlaced || soft is null || (hasLine && axis is null)) return null;
        if (axis is not null && (axis.Value.Millimetres() - points![0].Value.Millimetres()).Length is var apart and < TurnedForm.LeastAxisMm)
        {
            FileMessages.ShortAxis(axisField, apart, TurnedForm.LeastAxisMm);
            return null;
        }

        draft.Remember(path, reader.Node.Heading);
        ImmutableArray<MeasuredPoint> placed = [.. points!.Select((p, i) => draft.Point(needed == 1 ? $"{path}/at" : $"{path}/at/{i + 1}", p, within))];
        MeasuredPoint? along = axis is null ? null : draft.Point($"{path}/axis", axis, within);
        soft.Assume(path, draft);
        return soft.On(new FreeJoint(name, kind.Value, first!.Value, second!.Value, placed, along));
    }

    private static string Word(FreeJointKind kind) => Kinds.First(k => k.Value == kind).Key;
}
