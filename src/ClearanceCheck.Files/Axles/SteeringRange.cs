using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;

namespace ClearanceCheck.Files.Axles;

/// <summary>How far a steering is looked at each way: one number for both ways, or one for each with the way in its key.</summary>
/// <param name="Key">The key for both ways: <c>lock</c>; <c>lock-left</c> and <c>lock-right</c> say one each.</param>
/// <param name="IsLength">True for a length, false for an angle.</param>
/// <param name="Least">The least that is taken, mm or degrees. Common practice, no source.</param>
/// <param name="Most">The most that is taken.</param>
/// <param name="What">What it is, as in "out of range for {What}".</param>
/// <param name="Meaning">What it says, for a person who left it out.</param>
internal sealed record SteeringRange(string Key, bool IsLength, double Least, double Most, string What, string Meaning)
{
    private const double LeastTurn = 5, MostTurn = 60, LeastWay = 10, MostWay = 200;

    /// <summary>A knuckle that turns on its kingpin.</summary>
    public static SteeringRange OfWheel(string wheel) => new("lock", false, LeastTurn, MostTurn, "the lock of a wheel", $"how far {wheel} turns each way");

    /// <summary>A pitman arm whose rods move knuckles on balls.</summary>
    public static SteeringRange OfPitman { get; } = new("pitman", false, LeastTurn, MostTurn, "the turn of a pitman arm", "how far the pitman arm turns each way");

    /// <summary>A rack whose rods move knuckles on balls.</summary>
    public static SteeringRange OfRack { get; } = new("rack", true, LeastWay, MostWay, "the way of a rack", "how far the rack moves each way");

    /// <summary>A hinge of a free layout.</summary>
    public static SteeringRange OfHinge { get; } = new("lock", false, LeastTurn, MostTurn, "the turn of a steering", "how far the hinge turns each way");

    /// <summary>A slide of a free layout.</summary>
    public static SteeringRange OfSlide { get; } = new("way", true, LeastWay, MostWay, "the way of a rack", "how far the slide moves each way");

    private static string[] Keys { get; } = ["lock", "pitman", "rack", "way"];

    /// <summary>How far to the left and to the right, rad or mm; null where that is missing or faulty.</summary>
    public Boxed<(double Left, double Right)>? Read(MappingReader reader)
    {
        string leftKey = $"{Key}-left", rightKey = $"{Key}-right";
        bool both = reader.Has(Key), either = reader.Has(leftKey) | reader.Has(rightKey);
        if (both && either)
        {
            FileMessages.RangeTwice(reader, Key);
            reader.Allow(leftKey, rightKey);
            return null;
        }

        if (!both && !either && SaysOther(reader)) return null;
        double? left = ReadWay(either ? reader.Required(leftKey, $"{Meaning.Replace(" each way", "", StringComparison.Ordinal)} to the left") : reader.Required(Key, Meaning));
        double? right = either ? ReadWay(reader.Required(rightKey, $"{Meaning.Replace(" each way", "", StringComparison.Ordinal)} to the right")) : left;
        return left is { } l && right is { } r ? new((l, r)) : null;
    }

    private double? ReadWay(Field field) => IsLength
        ? field.Length(Sizes.Range(Least, Most, What))?.Value.Length.Millimetres
        : Angles.Read(field, Least, Most, What)?.Value.Radians;

    // A range of another steering in place of this one's is one fault, not an unknown key and a missing one.
    private bool SaysOther(MappingReader reader)
    {
        string[] endings = ["", "-left", "-right"];
        string[] other = [.. Keys.Where(k => k != Key).SelectMany(k => endings.Select(e => k + e)).Where(k => reader.Node.Find(k) is not null)];
        if (other.Length == 0) return false;
        FileMessages.OtherRange(reader.Optional(other[0]), other[0], this);
        reader.Allow(other);
        return true;
    }
}
