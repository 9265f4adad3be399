using System.Collections.Immutable;

namespace ClearanceCheck.Geometry.Shapes;

/// <summary>Directions around a full turn, for turns cut into powers of two.</summary>
internal static class RoundTable
{
    private const int MostLevels = 12;
    private const int Size = 1 << MostLevels;

    private static readonly ImmutableArray<(double Cosine, double Sine)> Directions = Make();

    /// <summary>Where sector <paramref name="index"/> of 2^level begins.</summary>
    public static (double Cosine, double Sine) At(int level, int index) => Directions[(index << (MostLevels - level)) & (Size - 1)];

    /// <summary>The middle of sector <paramref name="index"/> of 2^level.</summary>
    public static (double Cosine, double Sine) Between(int level, int index) => Directions[(((2 * index) + 1) << (MostLevels - level - 1)) & (Size - 1)];

    /// <summary>The cosine of half a sector of 2^level.</summary>
    public static double Cosine(int level) => Directions[1 << (MostLevels - level - 1)].Cosine;

    private static ImmutableArray<(double Cosine, double Sine)> Make()
    {
        var made = ImmutableArray.CreateBuilder<(double, double)>(Size);
        for (int i = 0; i < Size; i++)
        {
            (double sine, double cosine) = Trigonometry.SinCos(2 * Math.PI * i / Size);
            made.Add((cosine, sine));
        }

        return made.MoveToImmutable();
    }
}
