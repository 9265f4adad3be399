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
            $"The links of the axle {axle} don't let it stand as typed in the state {state.State}: left wheel {Travel(state.LeftTravelMm)}, right wheel {Travel(state.RightTravelMm)}.",
            $"Read hub to fender again in {state.State} and at ride height, or measure again the points of the links, which hold the axle before it gets there."),
        _ => throw new UnreachableException(),
    };

    // The state's own reading; the state at ride height may have none.
    private static SourceSpan Place(string axle, string state, IReadOnlyDictionary<string, SourceSpan> places)
    {
        foreach (string path in new[] { $"states/{state}/hub-to-fender/{axle}-left", $"states/{state}" })
            if (places.TryGetValue(path, out SourceSpan exact)) return exact;
        return places[$"axles/{axle}"];
    }

    private static string Travel(double mm) => mm == 0 ? "at ride height" : $"{NumberFormat.UpTo(Math.Abs(mm), 1)} mm {(mm > 0 ? "into bump" : "into droop")}";
}
