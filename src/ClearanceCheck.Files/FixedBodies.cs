using System.Collections.Immutable;

namespace ClearanceCheck.Files;

/// <summary>Bodies that hang on the chassis and are taken as fixed to it.</summary>
internal static class FixedBodies
{
    public static ImmutableArray<string> All { get; } = ["exhaust", "engine"];
}
