namespace ClearanceCheck.Rules;

/// <summary>Where a field of a rule in effect comes from.</summary>
/// <param name="Field">The key: <c>limit</c>.</param>
/// <param name="Layer">The library or overlay that it stands in.</param>
/// <param name="Place">File, line and column.</param>
/// <param name="Typed">The value as typed, on one line.</param>
public sealed record FieldOrigin(string Field, string Layer, string Place, string Typed);
