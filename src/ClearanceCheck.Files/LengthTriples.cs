using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Files;

/// <summary>A typed point as a place, mm.</summary>
internal static class LengthTriples
{
    public static Vector3d Millimetres(this LengthTriple t) => new(t.X.Length.Millimetres, t.Y.Length.Millimetres, t.Z.Length.Millimetres);

    /// <summary>The widest half step of its three numbers, mm.</summary>
    public static double HalfStepMm(this LengthTriple t) => Math.Max(t.X.HalfStepMm, Math.Max(t.Y.HalfStepMm, t.Z.HalfStepMm));
}
