using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>What a driveshaft's keys say beside its shape: its joints, its splines, its yokes and the piece before it.</summary>
internal sealed record ShaftDriveline(
    ShaftJointKind First, ShaftJointKind Second, (Placed<LengthReading> Length, Placed<LengthReading> Engaged)? Splines, Placed<Angle>? Phase, Placed<string>? After)
{
    // Yokes that are a half turn apart stand as they did.
    private const double MostPhaseDegrees = 90;

    private static readonly Dictionary<string, ShaftJointKind> Kinds = new(StringComparer.Ordinal)
    {
        ["single"] = ShaftJointKind.Single,
        ["double-cardan"] = ShaftJointKind.DoubleCardan,
        ["constant-velocity"] = ShaftJointKind.ConstantVelocity,
    };

    private static readonly LengthRange Length = Sizes.Range(10, 1000, "the length of a spline"), Engagement = Sizes.Range(0, 1000, "the engaged length of a spline");

    /// <summary>Null when any of it is faulty, which has been said.</summary>
    public static ShaftDriveline? Read(PartSource part)
    {
        Field joints = part.Reader.Optional("joints"), splines = part.Reader.Optional("splines"), phaseField = part.Reader.Optional("phase"), afterField = part.Reader.Optional("after");
        TypedJoints? kinds = joints.Mapping(r => ReadJoints(part, r));
        TypedSplines? sliding = splines.Mapping(ReadSplines);
        Placed<Angle>? phase = ReadPhase(phaseField);
        Placed<string>? after = afterField.Id();
        bool sound = Fits(joints, kinds) & Fits(splines, sliding) & Fits(phaseField, phase) & Fits(afterField, after);
        if (!sound) return null;
        return new ShaftDriveline(
            kinds?.First ?? ShaftJointKind.Single, kinds?.Second ?? ShaftJointKind.Single, sliding is null ? null : (sliding.Length, sliding.Engaged), phase, after);
    }

    /// <summary>The shaft with all of it.</summary>
    public PartForm.Shaft On(PartSource part, PartForm.Shaft shaft, MeasuredPoint? firstAhead, MeasuredPoint? secondAhead)
    {
        if (Phase is not null) part.Draft.Remember(part.Path("phase"), Phase.Span);
        if (After is not null) part.Draft.Remember(part.Path("after"), After.Span);
        return shaft with
        {
            FirstEnd = new ShaftEnd(First, firstAhead),
            SecondEnd = new ShaftEnd(Second, secondAhead),
            Splines = Splines is var (length, engaged)
                ? new Splines(part.Draft.Length(part.Path("splines/length"), length, part.Tape()), part.Draft.Length(part.Path("splines/engaged"), engaged, part.Tape()))
                : null,
            PhaseRad = Phase?.Value.Radians ?? 0,
            After = After?.Value,
        };
    }

    private static bool Fits(Field field, object? read) => !field.IsPresent || read is not null;

    private static TypedJoints? ReadJoints(PartSource part, MappingReader reader)
    {
        Field firstField = reader.Optional("first"), secondField = reader.Optional("second");
        Placed<ShaftJointKind>? first = firstField.Choice(Kinds), second = secondField.Choice(Kinds);
        if (first is not null) part.Draft.Remember(part.Path("joints/first"), first.Span);
        if (second is not null) part.Draft.Remember(part.Path("joints/second"), second.Span);
        return Fits(firstField, first) & Fits(secondField, second) ? new TypedJoints(first?.Value, second?.Value) : null;
    }

    private static TypedSplines? ReadSplines(MappingReader reader)
    {
        Placed<LengthReading>? length = reader.Required("length", "how long its splines can engage at all").Length(Length);
        Placed<LengthReading>? engaged = reader.Required("engaged", "how much of them was engaged as measured").Length(Engagement);
        if (length is null || engaged is null) return null;
        if (engaged.Value.Length <= length.Value.Length) return new TypedSplines(length, engaged);
        FileMessages.EngagedBeyondSpline(reader, engaged, length);
        return null;
    }

    private static Placed<Angle>? ReadPhase(Field field)
    {
        if (field.Angle() is not { } typed) return null;
        if (Math.Abs(typed.Value.Degrees) <= MostPhaseDegrees) return typed;
        FileMessages.PhaseOutOfRange(field, MostPhaseDegrees);
        return null;
    }

    private sealed record TypedJoints(ShaftJointKind? First, ShaftJointKind? Second);

    private sealed record TypedSplines(Placed<LengthReading> Length, Placed<LengthReading> Engaged);
}
