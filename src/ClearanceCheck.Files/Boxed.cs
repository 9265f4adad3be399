namespace ClearanceCheck.Files;

/// <summary>Carries a value through a reader that returns references.</summary>
internal sealed record Boxed<T>(T Value);
