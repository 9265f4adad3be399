using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Geometry.Tests.Oracle;

namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>A disc and a capsule with their reference gap (sharp cylinder).</summary>
internal sealed record DiscPair(Disc First, Capsule Second, double Gap);
