namespace ClearanceCheck.Rules;

/// <summary>A library, or a shop's rules on top of one.</summary>
/// <param name="IsOverlay">True for what stands on another layer.</param>
/// <param name="Hash">SHA-256 over its files, 64 small hexadecimal digits.</param>
public sealed record RuleLayer(string Name, string Version, bool IsOverlay, string Hash);
