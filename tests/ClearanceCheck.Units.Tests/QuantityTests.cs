namespace ClearanceCheck.Units.Tests;

public sealed class QuantityTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void No_quantity_holds_a_number_that_is_not_finite(double value)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Length.FromMillimetres(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Length.FromInches(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Angle.FromDegrees(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Angle.FromRadians(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Percentage.FromPercent(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Percentage.FromFraction(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(value));
        Should.Throw<ArgumentOutOfRangeException>(() => Stiffness.FromNewtonsPerMillimetre(value));
        Should.Throw<ArgumentOutOfRangeException>(() => TurningStiffness.FromNewtonMetresPerRadian(value));
        Should.Throw<ArgumentOutOfRangeException>(() => TurningStiffness.FromNewtonMetresPerDegree(value));
    }

    [Fact]
    public void Arithmetic_that_overflows_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Length.FromMillimetres(double.MaxValue) * 2);

    [Fact]
    public void An_inch_is_25_4_mm() => Length.FromInches(1).Millimetres.ShouldBe(25.4);

    [Fact]
    public void Lengths_add_subtract_scale_and_compare()
    {
        var long1 = Length.FromMillimetres(30);
        var short1 = Length.FromMillimetres(12);

        (long1 + short1).Millimetres.ShouldBe(42);
        (short1 - long1).Millimetres.ShouldBe(-18);
        (short1 - long1).Abs().Millimetres.ShouldBe(18);
        (2 * -short1).Millimetres.ShouldBe(-24);
        (long1 > short1).ShouldBeTrue();
        (long1 <= short1).ShouldBeFalse();
        long1.CompareTo(short1).ShouldBePositive();
    }

    [Fact]
    public void Water_boils_at_212_Fahrenheit_and_373_15_kelvins()
    {
        Temperature.FromCelsius(100).Fahrenheit.ShouldBe(212);
        Temperature.FromFahrenheit(212).Celsius.ShouldBe(100);
        Temperature.FromCelsius(100).Kelvins.ShouldBe(373.15);
    }

    [Fact]
    public void Nothing_is_colder_than_absolute_zero() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-273.16));

    [Fact]
    public void Every_value_type_is_a_readonly_struct_without_public_fields()
    {
        foreach (var type in typeof(Length).Assembly.GetExportedTypes().Where(type => type.IsValueType && !type.IsEnum))
        {
            type.GetCustomAttributes(false).ShouldContain(attribute => attribute.GetType().Name == "IsReadOnlyAttribute", type.Name);
            type.GetFields().Where(field => !field.IsLiteral).ShouldBeEmpty(type.Name);
        }
    }
}
