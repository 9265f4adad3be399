
namespace ClearanceCheck.Units.Tests;

/// <summary>Reads typed values under two cultures and shows faults as text.</summary>
internal static class Typed
{
    public static string Length(string text, LengthUnit? unit) => Both(() => Show(LengthText.Parse(text, unit).Fault, text));

    public static string Angle(string text) => Both(() => Show(QuantityText.ParseAngle(text).Fault, text));

    public static string Percentage(string text) => Both(() => Show(QuantityText.ParsePercentage(text).Fault, text));

    public static string Stiffness(string text) => Both(() => Show(QuantityText.ParseStiffness(text).Fault, text));

    public static string TurningStiffness(string text) => Both(() => Show(QuantityText.ParseTurningStiffness(text).Fault, text));

    public static string Temperature(string text) => Both(() => Show(QuantityText.ParseTemperature(text).Fault, text));

    public static string Number(string text) => Both(() => Show(QuantityText.ParseNumber(text).Fault, text));

    /// <summary>Runs under the invariant culture and under one with a decimal comma; both have to give the same.</summary>
    public static T Both<T>(Func<T> run)
    {
        T invariant = Cultures.Under("", run);
        Cultures.Under("de-DE", run).ShouldBe(invariant);
        return invariant;
    }

    private static string Show(ParseFault? fault, string text) => fault is null
        ? "read"
        : $"{fault.Id}\n{text}\n{new string(' ', fault.Offset)}{new string('^', Math.Max(1, fault.Extent))}\n{fault.Message}\n{fault.Help}";
}
