using System.Globalization;

namespace ClearanceCheck.Tests.Shared;

/// <summary>Runs something under a culture and puts the old one back.</summary>
internal static class Cultures
{
    /// <param name="culture">Its name: empty for the invariant one, <c>de-DE</c> for one that writes a comma before decimals.</param>
    /// <param name="run">What to run.</param>
    public static T Under<T>(string culture, Func<T> run)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            // A machine without culture data would make every culture the invariant one, and the test a sham.
            CultureInfo.CurrentCulture.NumberFormat.NumberDecimalSeparator.ShouldBe(culture.Length == 0 ? "." : ",");
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
