using System.Diagnostics;
using ClearanceCheck.Documents;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Units;

namespace ClearanceCheck.Cli.Inputs;

/// <summary>Why an axle could not be set in motion, in words, with its place in the inspection file.</summary>
internal static class MotionMessages
{
    public static Diagnostic Of(string axle, MotionFault fault, IReadOnlyDictionary<string, SourceSpan> places) => fault switch
    {
        MotionFault.Links links => LinkageMessages.Of(axle, links.Fault, places),
        MotionFault.StateOutOfReach state => Diagnostic.Error(
            "linkage.state-out-of-reach",
            Place(axle, state.State, places),
            $"The links of the axle {axle} don't let it stand as typed in the state {state.State}: left wheel {Travel(state.LeftTravelMm)}, right wheel {Travel(state.RightTravelMm)}; so points measured there have no place on it.",
            $"Read hub to fender again in {state.State} and at ride height, or measure again the points of the links, which hold the axle before it gets there.",
            [.. Typed(axle, state.State, places).Skip(1)]),
        _ => throw new UnreachableException(),
    };

    private static SourceSpan Place(string axle, string state, IReadOnlyDictionary<string, SourceSpan> places) =>
        Typed(axle, state, places).Select(t => (SourceSpan?)t.Span).FirstOrDefault() ?? places[$"axles/{axle}"];

    // The four heights that say the travels, those of the state first; some of them may not be typed where the state is ride height.
    private static IEnumerable<RelatedSpan> Typed(string axle, string state, IReadOnlyDictionary<string, SourceSpan> places)
    {
        foreach (string of in new[] { state, "ride" }.Distinct())
            foreach (string side in new[] { "left", "right" })
                if (places.TryGetValue($"states/{of}/hub-to-fender/{axle}-{side}", out SourceSpan span)) yield return new RelatedSpan(span, $"{side} in {of}");
    }

    private static string Travel(double mm) => mm == 0 ? "at ride height" : $"{NumberFormat.UpTo(Math.Abs(mm), 1)} mm {(mm > 0 ? "into bump" : "into droop")}";
}
