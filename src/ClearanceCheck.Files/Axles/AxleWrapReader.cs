using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads <c>axle-wrap</c>: how far an axle winds up on its springs, <c>[-3 deg, 5 deg]</c> or <c>none</c>.</summary>
internal static class AxleWrapReader
{
    /// <summary>More than this would break springs. Common practice, no source.</summary>
    public const double MostDegrees = 20;

    private const string None = "none";

    /// <summary>The range, or none where it is not looked at; null where it is faulty, which is said.</summary>
    public static Boxed<WrapRange?>? Read(Field field, AxleLayout layout, string axle, VehicleDraft draft)
    {
        string path = $"axles/{axle}/axle-wrap";
        if (!layout.Wraps)
        {
            if (!field.IsPresent) return new(null);
            FileMessages.DoesNotWindUp(field, layout);
            return null;
        }

        if (!field.IsPresent)
        {
            draft.Assume(
                path,
                $"Axle wrap not typed: taken as {NumberFormat.UpTo(Defaults.WrapUpDegrees, 1)} degrees nose up under drive and {NumberFormat.UpTo(Defaults.WrapDownDegrees, 1)} degrees nose down under braking (common practice, no source).");
            return new(Range(Angle.FromDegrees(-Defaults.WrapUpDegrees), Angle.FromDegrees(Defaults.WrapDownDegrees)));
        }

        if (field.Node is ScalarNode { Text: None })
        {
            draft.Assume(path, "The file says `axle-wrap: none`: the axle is not wound up here under drive or braking.");
            return new(null);
        }

        if (field.Node is ScalarNode)
        {
            FileMessages.WrapOutOfRange(field);
            return null;
        }

        if (field.List(f => f.Angle(), 2)?.Value is not [var low, var high]) return null;
        if (low.Value.Radians < 0 && high.Value.Radians > 0 && low.Value >= Angle.FromDegrees(-MostDegrees) && high.Value <= Angle.FromDegrees(MostDegrees))
        {
            draft.Remember(path, field.Node!.Span);
            return new(Range(low.Value, high.Value));
        }

        FileMessages.WrapOutOfRange(field);
        return null;
    }

    private static WrapRange? Range(Angle low, Angle high) => new WrapRange(low.Radians, high.Radians);
}
