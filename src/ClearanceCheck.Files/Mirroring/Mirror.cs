using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Mirroring;

/// <summary>What <c>side</c> and <c>mirror-within</c> say: one side was measured, the other is its mirror image.</summary>
/// <param name="Side">The side that was measured.</param>
/// <param name="Place">Where that is typed.</param>
/// <param name="HalfWidthMm">How far an image may lie beside its mirrored source, each way.</param>
/// <param name="IsAssumed">True when nobody typed that.</param>
internal sealed record Mirror(string Side, Field Place, double HalfWidthMm, bool IsAssumed)
{
    /// <summary>The side that is the image.</summary>
    public string Other => Opposite(Side);

    /// <summary>Reads both keys; null where there is no mirror, or a faulty one.</summary>
    public static Mirror? Read(MappingReader reader)
    {
        Field sideField = reader.Optional("side"), withinField = reader.Optional("mirror-within");
        Placed<string>? side = sideField.Word(["left", "right"]);
        Placed<LengthReading>? within = withinField.Length(LengthRange.Allowance);
        if (withinField.IsPresent && !sideField.IsPresent) FileMessages.MirrorWithoutSide(withinField);
        if (side is null || (withinField.IsPresent && within is null)) return null;
        return new Mirror(side.Value, sideField, within?.Value.Length.Millimetres ?? Defaults.MirrorMm, within is null);
    }

    /// <summary>The image of a point: it moves with its source, and lies beside the image by numbers of its own.</summary>
    /// <param name="source">The point that was measured.</param>
    /// <param name="path">The image's path in the model.</param>
    /// <param name="draft">The model so far.</param>
    public MeasuredPoint Of(MeasuredPoint source, string path, VehicleDraft draft) =>
        source.Mirrored(draft.Computed(path, Geometry.Vector3d.Zero, HalfWidthMm, IsAssumed));

    /// <summary>What the report says of it.</summary>
    /// <param name="what">What is an image: "The points of the right side are".</param>
    public string Sentence(string what) =>
        $"{what} taken as the mirror image of the {Side} side over the centre plane, {NumberFormat.UpTo(HalfWidthMm, 1)} mm each way{(IsAssumed ? " (not typed; common practice, no source)" : "")}; what an axle's track bar had moved aside, or a leaning axle, is not taken out of it.";

    /// <summary>A name with its word for one side exchanged for the other's: <c>hub-left</c> for <c>hub-right</c>; null when it has none.</summary>
    public static string? Swapped(string name) => SideOf(name) is { } side ? string.Join('-', name.Split('-').Select(w => w == side ? Opposite(side) : w)) : null;

    /// <summary>A name without its word for a side: <c>lower-link-frame</c> for <c>lower-link-left-frame</c>, <c>beam-pivot</c> for <c>beam-pivot-of-left</c>.</summary>
    public static string Bare(string name) => string.Join('-', name.Split('-').Where(w => w is not ("left" or "right" or "of")));

    /// <summary>The side that a name says, or null.</summary>
    public static string? SideOf(string name) => name.Split('-').FirstOrDefault(w => w is "left" or "right");

    private static string Opposite(string side) => side == "left" ? "right" : "left";
}
