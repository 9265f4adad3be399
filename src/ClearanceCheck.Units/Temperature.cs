namespace ClearanceCheck.Units;

/// <summary>A temperature, held in degrees Celsius; never below absolute zero.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    /// <summary>Absolute zero in degrees Celsius (definition of the Celsius scale, SI brochure; from memory).</summary>
    public const double AbsoluteZeroCelsius = -273.15;

    private readonly double celsius;

    private Temperature(double celsius) => this.celsius = celsius;

    /// <summary>The temperature in degrees Celsius.</summary>
    public double Celsius => celsius;

    /// <summary>The temperature in degrees Fahrenheit.</summary>
    public double Fahrenheit => (celsius * 9 / 5) + 32;

    /// <summary>The temperature in kelvins.</summary>
    public double Kelvins => celsius - AbsoluteZeroCelsius;

    /// <summary>Makes a temperature from degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or lies below absolute zero.</exception>
    public static Temperature FromCelsius(double celsius) =>
        Finite.OrThrow(celsius, nameof(celsius)) >= AbsoluteZeroCelsius
            ? new(celsius)
            : throw new ArgumentOutOfRangeException(nameof(celsius), "No temperature lies below absolute zero.");

    /// <summary>Makes a temperature from degrees Fahrenheit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite or lies below absolute zero.</exception>
    public static Temperature FromFahrenheit(double fahrenheit) => FromCelsius((fahrenheit - 32) * 5 / 9);

    public static bool operator <(Temperature left, Temperature right) => left.celsius < right.celsius;

    public static bool operator >(Temperature left, Temperature right) => left.celsius > right.celsius;

    public static bool operator <=(Temperature left, Temperature right) => left.celsius <= right.celsius;

    public static bool operator >=(Temperature left, Temperature right) => left.celsius >= right.celsius;

    public int CompareTo(Temperature other) => celsius.CompareTo(other.celsius);

    /// <summary>Degrees Celsius, for logs and failed tests.</summary>
    public override string ToString() => NumberFormat.UpTo(celsius, 9) + " °C";
}
