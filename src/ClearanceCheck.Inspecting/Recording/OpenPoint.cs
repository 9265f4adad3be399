namespace ClearanceCheck.Inspecting.Recording;

/// <summary>Something of the record that stands against a drive.</summary>
/// <param name="Holds">True where it holds the vehicle; false where it is a condition.</param>
/// <param name="Reason">Why, a sentence.</param>
/// <param name="Action">What to do, a sentence.</param>
internal sealed record OpenPoint(bool Holds, string Reason, string Action);
