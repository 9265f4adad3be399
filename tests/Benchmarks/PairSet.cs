namespace ClearanceCheck.Benchmarks;

/// <summary>Pairs of pieces of one kind.</summary>
internal sealed record PairSet(string Name, IReadOnlyList<(Corners First, Corners Second)> Pairs);
