using ClearanceCheck.Geometry;

namespace ClearanceCheck.Quantities.Gaps;

/// <summary>A place at which a part is joined to a body: contact near it with what is fixed to that body is meant.</summary>
/// <param name="Body">The body's name.</param>
/// <param name="At">Measured state, mm.</param>
/// <param name="RadiusMm">How near is near.</param>
/// <param name="Words">What the place is to the part: "upper mount", "clip".</param>
public sealed record JoinedPlace(string Body, Vector3d At, double RadiusMm, string Words);
