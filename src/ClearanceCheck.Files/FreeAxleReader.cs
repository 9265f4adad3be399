using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads a <c>free</c> layout: bodies, joints and the two wheels, spelled out.</summary>
internal static class FreeAxleReader
{
    private static readonly Dictionary<string, FreeJointKind> Kinds = new(StringComparer.Ordinal)
    {
        ["rod"] = FreeJointKind.Rod,
        ["ball"] = FreeJointKind.Ball,
        ["hinge"] = FreeJointKind.Hinge,
    };

    public static AxleGeometry? Read(MappingReader reader, string axle, double? within, string measuredIn, VehicleDraft draft)
    {
        var bodies = new List<string>();
        foreach (Field item in reader.Required("bodies", "the names of the axle's moving bodies").Items() ?? [])
            if (item.Id() is { } body) bodies.Add(body.Value);
        ImmutableArray<string> names = [Vehicle.Chassis, .. bodies.Select(b => $"{axle}/{b}")];
        Within half = Within.For(within, draft.FileWithin, Defaults.JointCentreMm, "a hidden joint centre");
        var joints = ImmutableArray.CreateBuilder<FreeJoint>();
        bool whole = true;
        foreach ((Placed<string> name, Field value) in reader.Required("joints", "the joints between the bodies, by name").Entries() ?? [])
        {
            FreeJoint? joint = value.Mapping(r => ReadJoint(r, axle, name.Value, names, half, draft));
            if (joint is null) whole = false;
            else joints.Add(joint);
        }

        Boxed<((string, MeasuredPoint) Left, (string, MeasuredPoint) Right)>? wheels = reader
            .Required("wheels", "the body and hub of the left and the right wheel")
            .Mapping(r => ReadWheels(r, axle, names, half, draft));
        if (wheels is null || !whole) return null;
        return new AxleGeometry { MeasuredIn = measuredIn, FreeBodies = [.. bodies], FreeJoints = joints.ToImmutable(), Left = wheels.Value.Left, Right = wheels.Value.Right };
    }

    private static FreeJoint? ReadJoint(MappingReader reader, string axle, string name, ImmutableArray<string> bodies, Within within, VehicleDraft draft)
    {
        Placed<FreeJointKind>? kind = reader.Required("kind", "rod, ball or hinge").Choice(Kinds);
        Field between = reader.Required("between", "the two bodies it joins");
        IReadOnlyList<Field>? pair = between.Items(2);
        (Placed<string>? first, Placed<string>? second) = (pair?[0].Word(bodies), pair?[1].Word(bodies));
        if (first is not null && second is not null && first.Value == second.Value) FileMessages.JoinedToItself(between, first.Value);
        Field at = reader.Required("at", "its place: one point in a list, for a rod one on each body in the order of `between`");
        IReadOnlyList<Placed<LengthTriple>>? points = at.Triples()?.Value;
        Placed<LengthTriple>? axis = kind?.Value == FreeJointKind.Hinge
            ? reader.Required("axis", "a second point on the line of the hinge").Triple()
            : null;
        if (kind is null || first is null || second is null || points is null) return null;
        int needed = kind.Value == FreeJointKind.Rod ? 2 : 1;
        if (points.Count != needed)
        {
            FileMessages.PointsOfJoint(at, kind.Value, needed, points.Count);
            return null;
        }

        if (kind.Value == FreeJointKind.Hinge && axis is null) return null;
        string path = $"axles/{axle}/joints/{name}";
        draft.Remember(path, reader.Node.Heading);
        ImmutableArray<MeasuredPoint> placed = [.. points.Select((p, i) => draft.Point(needed == 1 ? $"{path}/at" : $"{path}/at/{i + 1}", p, within))];
        MeasuredPoint? along = axis is null ? null : draft.Point($"{path}/axis", axis, within);
        return new FreeJoint(name, kind.Value, first.Value, second.Value, placed, along);
    }

    private static Boxed<((string, MeasuredPoint), (string, MeasuredPoint))>? ReadWheels(
        MappingReader reader, string axle, ImmutableArray<string> bodies, Within within, VehicleDraft draft)
    {
        ImmutableArray<string> moving = bodies.RemoveAt(0);
        Boxed<(string, MeasuredPoint)>? left = reader.Required("left", "the left wheel").Mapping(r => ReadWheel(r, axle, "left", moving, within, draft));
        Boxed<(string, MeasuredPoint)>? right = reader.Required("right", "the right wheel").Mapping(r => ReadWheel(r, axle, "right", moving, within, draft));
        return left is null || right is null ? null : new((left.Value, right.Value));
    }

    private static Boxed<(string, MeasuredPoint)>? ReadWheel(
        MappingReader reader, string axle, string side, ImmutableArray<string> bodies, Within within, VehicleDraft draft)
    {
        Placed<string>? body = reader.Required("body", "the body that carries the hub").Word(bodies);
        Placed<LengthTriple>? hub = reader.Required("hub", "the centre of the wheel's mounting face").Triple();
        return body is null || hub is null ? null : new((body.Value, draft.Point($"axles/{axle}/wheels/{side}/hub", hub, within)));
    }
}
