using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads <c>anti-roll-bar</c> of an axle: whether it is connected, and what holds it.</summary>
internal static class AntiRollBarReader
{
    private const string Connected = "connected", OnAxle = "axle", OnFrame = "frame";
    private static readonly ImmutableArray<string> States = [Connected, "disconnected", "absent"];

    /// <summary>The bar that is typed as connected; null for none, one that is not connected, or a faulty one. Nothing is said yet.</summary>
    public static AntiRollBar? BarOf(Field field, AxleLayout layout) =>
        layout is not FreeLayout && field.Node is MappingNode node && node.Find("is")?.Value is ScalarNode { Text: Connected }
            ? new AntiRollBar(layout.IsSolid && node.Find("on")?.Value is ScalarNode { Text: OnAxle })
            : null;

    /// <summary>True where something is typed that does not say whether the bar is connected: nobody knows then which points it has.</summary>
    public static bool IsUnclear(Field field) =>
        field.IsPresent && !((field.Node as MappingNode)?.Find("is")?.Value is ScalarNode { Text: var word } && States.Contains(word));

    /// <summary>Says what is wrong with it, and what is taken for granted; false where something is wrong.</summary>
    public static bool Check(Field field, AxleLayout layout, string axle, VehicleDraft draft)
    {
        if (!field.IsPresent) return true;
        if (layout is FreeLayout)
        {
            FileMessages.FreeBar(field);
            return false;
        }

        Boxed<string>? state = field.Mapping(reader =>
        {
            Placed<string>? word = reader.Required("is", "whether it is connected").Word(States);
            Field on = reader.Optional("on");
            Placed<string>? held = on.Word(layout.IsSolid ? [OnFrame, OnAxle] : [OnFrame]);
            return word is null || (on.IsPresent && held is null) ? null : new Boxed<string>(word.Value);
        });
        if (state is null) return false;
        draft.Assume(
            $"axles/{axle}/anti-roll-bar",
            state.Value == Connected
                ? $"The anti-roll bar of the {axle} axle is taken as stiff arms that twist against each other, turning in its bushings without give."
                : $"The anti-roll bar of the {axle} axle is {state.Value}: where its arms or loose links lie was not looked at.");
        return true;
    }
}
