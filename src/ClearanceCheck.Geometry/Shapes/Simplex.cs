namespace ClearanceCheck.Geometry.Shapes;

/// <summary>A point (A = B = C), segment (B = C) or triangle by the numbers of its corners, with a radius, mm.</summary>
public readonly record struct Simplex(int A, int B, int C, double Radius);
