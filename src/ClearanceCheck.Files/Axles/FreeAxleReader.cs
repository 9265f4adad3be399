using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads a <c>free</c> layout: bodies, joints and the two wheels, spelled out.</summary>
internal static class FreeAxleReader
{
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
            FreeJoint? joint = value.Mapping(r => FreeJointReader.Read(r, axle, name.Value, names, half, draft));
            if (joint is null) whole = false;
            else joints.Add(joint);
        }

        Boxed<(FreeWheel Left, FreeWheel Right)>? wheels = reader
            .Required("wheels", "the body and hub of the left and the right wheel")
            .Mapping(r => ReadWheels(r, axle, names.RemoveAt(0), half, draft));
        if (wheels is null || !whole) return null;
        (FreeWheel left, FreeWheel right) = wheels.Value;
        return new AxleGeometry
        {
            MeasuredIn = measuredIn,
            FreeBodies = [.. bodies],
            FreeJoints = joints.ToImmutable(),
            FreeTravelBodies = left.TravelOn is null && right.TravelOn is null ? [] : [left.TravelBody, right.TravelBody],
            IsSolid = left.TravelBody == right.TravelBody,
            Left = (left.Body, left.Hub),
            Right = (right.Body, right.Hub),
        };
    }

    private static Boxed<(FreeWheel Left, FreeWheel Right)>? ReadWheels(MappingReader reader, string axle, ImmutableArray<string> moving, Within within, VehicleDraft draft)
    {
        FreeWheel? left = reader.Required("left", "the left wheel").Mapping(r => ReadWheel(r, axle, "left", moving, within, draft));
        FreeWheel? right = reader.Required("right", "the right wheel").Mapping(r => ReadWheel(r, axle, "right", moving, within, draft));
        return left is null || right is null ? null : new((left, right));
    }

    private static FreeWheel? ReadWheel(MappingReader reader, string axle, string side, ImmutableArray<string> moving, Within within, VehicleDraft draft)
    {
        Placed<string>? body = reader.Required("body", "the body that carries the hub").Word(moving);
        Placed<LengthTriple>? hub = reader.Required("hub", "the centre of the wheel's mounting face").Triple();
        Field travelField = reader.Optional("travel-on");
        Placed<string>? travel = travelField.Word(moving);
        if (body is null || hub is null || (travelField.IsPresent && travel is null)) return null;
        return new FreeWheel(body.Value, draft.Point($"axles/{axle}/wheels/{side}/hub", hub, within), travel?.Value);
    }
}
