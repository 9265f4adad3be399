namespace ClearanceCheck.Quantities.Tests;

/// <summary>Looks at a value on the way.</summary>
internal static class Fluent
{
    public static T With<T>(this T value, Action<T> look)
    {
        look(value);
        return value;
    }
}
