using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>How a joint of a free layout gives: a spring along its length, a bushing in all directions; nothing for the others.</summary>
/// <param name="Stiffness">N/mm; of a spring in X.</param>
/// <param name="Turning">N mm/rad; null where none is typed.</param>
/// <param name="RidesOnHousing">False where <c>stiffness-axes: vehicle</c> is typed, true where <c>housing</c> is; null where nothing is.</param>
internal sealed record SoftJoint(FreeJointKind Kind, Vector3d Stiffness, Vector3d? Turning, bool? RidesOnHousing)
{
    // Steel on steel is stiffer than this, and then no spring. Common practice, no source.
    private const double MostNPerMm = 1_000_000, MostNmPerRad = 1_000_000;

    // A spring softer than this holds nothing.
    private const double LeastSpringNPerMm = 0.1;

    private static readonly Dictionary<string, bool> OnHousing = new(StringComparer.Ordinal) { ["housing"] = true, ["vehicle"] = false };

    /// <summary>Reads what a joint of that kind needs; null where something is missing or faulty, which is said.</summary>
    public static SoftJoint? Read(MappingReader reader, FreeJointKind kind)
    {
        if (kind == FreeJointKind.Spring)
            return Stiff(reader.Required("stiffness", "how stiff it is along its length, such as `9000 N/mm`"), LeastSpringNPerMm) is { } k ? new(kind, new Vector3d(k, 0, 0), null, null) : null;
        if (kind != FreeJointKind.Bushing) return new SoftJoint(kind, Vector3d.Zero, null, null);
        Field stiffField = reader.Required("stiffness", "how stiff it is along x, y and z, such as `[7000 N/mm, 1500 N/mm, 7000 N/mm]`");
        Field turningField = reader.Optional("turning-stiffness"), axesField = reader.Optional("stiffness-axes");
        Vector3d? stiff = Three(stiffField, f => Stiff(f, 0)), turning = Three(turningField, Turn);
        Placed<bool>? onHousing = axesField.Choice(OnHousing);
        if (stiff is null || (turningField.IsPresent && turning is null) || (axesField.IsPresent && onHousing is null)) return null;
        if (stiff == Vector3d.Zero && (turning ?? Vector3d.Zero) == Vector3d.Zero)
        {
            FileMessages.HoldsNothing(stiffField);
            return null;
        }

        return new SoftJoint(kind, stiff.Value, turning, onHousing?.Value);
    }

    /// <summary>Lists what nobody typed.</summary>
    public void Assume(string path, VehicleDraft draft)
    {
        if (Kind != FreeJointKind.Bushing) return;
        if (Turning is null) draft.Assume($"{path}/turning-stiffness", "Its stiffness against turning is not typed: taken as turning freely.");
        if (RidesOnHousing is null) draft.Assume($"{path}/stiffness-axes", "Which axes its stiffness goes by is not typed: taken as turning with its housing.");
    }

    public FreeJoint On(FreeJoint joint) =>
        joint with { Stiffness = Stiffness, TurningStiffness = Turning ?? Vector3d.Zero, RidesOnHousing = RidesOnHousing ?? true };

    private static Vector3d? Three(Field field, Func<Field, double?> read)
    {
        if (field.List(f => read(f) is { } value ? new Boxed<double>(value) : null, 3)?.Value is not [var x, var y, var z]) return null;
        return new Vector3d(x.Value, y.Value, z.Value);
    }

    private static double? Stiff(Field field, double leastNPerMm)
    {
        if (field.Stiffness() is not { } typed) return null;
        if (typed.Value.NewtonsPerMillimetre >= leastNPerMm && typed.Value.NewtonsPerMillimetre <= MostNPerMm) return typed.Value.NewtonsPerMillimetre;
        FileMessages.StiffnessOutOfRange(field, typed.Span, Text(leastNPerMm, "N/mm"), Text(MostNPerMm, "N/mm"));
        return null;
    }

    private static double? Turn(Field field)
    {
        if (field.TurningStiffness() is not { } typed) return null;
        if (typed.Value.NewtonMetresPerRadian >= 0 && typed.Value.NewtonMetresPerRadian <= MostNmPerRad) return typed.Value.NewtonMillimetresPerRadian;
        FileMessages.StiffnessOutOfRange(field, typed.Span, Text(0, "Nm/rad"), Text(MostNmPerRad, "Nm/rad"));
        return null;
    }

    private static string Text(double value, string unit) => $"{NumberFormat.UpTo(value, 1)} {unit}";
}
