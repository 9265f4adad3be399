namespace ClearanceCheck.Vehicles.Tires;

/// <summary>Refuses figures of tires that are no sizes.</summary>
internal static class Positive
{
    public static double OrThrow(double mm, string name) =>
        mm > 0 && double.IsFinite(mm) ? mm : throw new ArgumentOutOfRangeException(name, mm, "Must be above zero and finite.");

    public static double? OrThrow(double? mm, string name) => mm is { } given ? OrThrow(given, name) : null;
}
