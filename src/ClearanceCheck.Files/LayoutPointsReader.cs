using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads the points of a layout: <c>points: { hanging: { hub-left: [x, y, z], ... } }</c>.</summary>
internal static class LayoutPointsReader
{
    public static AxleGeometry? Read(MappingReader reader, AxleLayout layout, string axle, double? within, VehicleDraft draft) =>
        reader.Required("points", "the points the layout hangs on, by the state they were measured in")
            .Mapping(states => ReadStates(states, layout, axle, within, draft));

    private static AxleGeometry? ReadStates(MappingReader states, AxleLayout layout, string axle, double? within, VehicleDraft draft)
    {
        string state = draft.States.MeasuredIn;
        foreach (string other in draft.States.ByName.Keys.Where(s => s != state && states.Has(s)))
            FileMessages.OtherState(states.Optional(other), other, state);
        return states.Required(state, $"the points as measured in the state {state}").Mapping(points => ReadPoints(points, layout, axle, within, draft));
    }

    private static AxleGeometry? ReadPoints(MappingReader points, AxleLayout layout, string axle, double? within, VehicleDraft draft)
    {
        var read = ImmutableSortedDictionary.CreateBuilder<string, MeasuredPoint>(StringComparer.Ordinal);
        Within joint = Within.For(within, draft.FileWithin, Defaults.JointCentreMm, "a hidden joint centre");
        foreach (LayoutPoint point in layout.Points)
        {
            Field field = points.Required(point.Name, point.Where);
            if (field.Triple() is not { } at) continue;
            CheckSide(field, point.Name, at.Value);
            read[point.Name] = draft.Point($"axles/{axle}/points/{point.Name}", at, joint);
        }

        if (read.Count < layout.Points.Length) return null;
        string body = $"{axle}/axle";
        return new AxleGeometry { Points = read.ToImmutable(), Left = (body, read["hub-left"]), Right = (body, read["hub-right"]) };
    }

    private static void CheckSide(Field field, string name, LengthTriple at)
    {
        double y = at.Y.Length.Millimetres;
        bool left = name.Contains("left", StringComparison.Ordinal), right = name.Contains("right", StringComparison.Ordinal);
        if ((left && y < 0) || (right && y > 0)) FileMessages.WrongSide(field, name, left);
    }
}
