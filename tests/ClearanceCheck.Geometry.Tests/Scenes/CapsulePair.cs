using ClearanceCheck.Geometry.Shapes;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>Two capsules with their reference gap; the kind is that of the degenerate set.</summary>
internal readonly record struct CapsulePair(Capsule First, Capsule Second, double Gap, int Kind);
