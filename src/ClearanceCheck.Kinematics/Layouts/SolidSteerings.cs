using System.Collections.Immutable;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>Steering linkages that go with axles whose knuckles turn about kingpins.</summary>
internal static class SolidSteerings
{
    public static ImmutableArray<string> All { get; } = ["cross-over", "inverted-y", "parallel", "rack", "lock-only"];
}
