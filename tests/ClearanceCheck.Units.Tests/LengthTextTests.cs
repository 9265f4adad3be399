using CsCheck;

namespace ClearanceCheck.Units.Tests;

public sealed class LengthTextTests
{
    /// <summary>Expected millimetres and half steps are worked out by hand from 25.4 mm an inch.</summary>
    [Theory]
    [InlineData("654 mm", 654, 0.5)]
    [InlineData("12.5 mm", 12.5, 0.05)]
    [InlineData("65.4 cm", 654, 0.5)]
    [InlineData("0.654 m", 654, 0.5)]
    [InlineData("+3 mm", 3, 0.5)]
    [InlineData(".5 mm", 0.5, 0.05)]
    [InlineData("100mm", 100, 0.5)]
    [InlineData("  7 mm ", 7, 0.5)]
    [InlineData("1 in", 25.4, 12.7)]
    [InlineData("31.6 in", 802.64, 1.27)]
    [InlineData("31-5/8 in", 803.275, 1.5875)]
    [InlineData("31 5/8\"", 803.275, 1.5875)]
    [InlineData("31-5/8\"", 803.275, 1.5875)]
    [InlineData("5/8 in", 15.875, 1.5875)]
    [InlineData("3/16 in", 4.7625, 0.79375)]
    [InlineData("1/64 in", 0.396875, 0.1984375)]
    [InlineData("-84-3/8 in", -2143.125, 1.5875)]
    [InlineData("\u221284-3/8 in", -2143.125, 1.5875)]
    [InlineData("2' 7-5/8\"", 803.275, 1.5875)]
    [InlineData("2'7\"", 787.4, 12.7)]
    [InlineData("2 ft 7 in", 787.4, 12.7)]
    [InlineData("2 ft", 609.6, 152.4)]
    [InlineData("2.5'", 762, 15.24)]
    [InlineData("-2 ft 7 in", -787.4, 12.7)]
    [InlineData("2\u2032 7\u2033", 787.4, 12.7)]
    [InlineData("2\u2019 7\u201D", 787.4, 12.7)]
    [InlineData("0 mm", 0, 0.5)]
    public void A_reading_with_its_unit_gives_millimetres_and_half_of_its_last_step(string text, double mm, double halfStepMm)
    {
        var reading = Typed.Both(() => LengthText.Parse(text, null).Value);

        reading.Length.Millimetres.ShouldBe(mm);
        reading.HalfStepMm.ShouldBe(halfStepMm);
    }

    [Theory]
    [InlineData("654", LengthUnit.Millimetre, 654)]
    [InlineData("65.4", LengthUnit.Centimetre, 654)]
    [InlineData("-61.5", LengthUnit.Millimetre, -61.5)]
    [InlineData("31-5/8", LengthUnit.Inch, 803.275)]
    [InlineData("31 in", LengthUnit.Millimetre, 787.4)]
    [InlineData("0", LengthUnit.Millimetre, 0)]
    [InlineData("0.5", LengthUnit.Millimetre, 0.5)]
    public void A_bare_number_takes_the_declared_unit_and_a_typed_unit_wins_over_it(string text, LengthUnit unit, double mm) =>
        Typed.Both(() => LengthText.Parse(text, unit).Value.Length.Millimetres).ShouldBe(mm);

    [Fact]
    public void Every_sixty_fourth_up_to_a_hundred_inches_reads_back_exactly() =>
        Gen.Select(Gen.Int[0, 100 * 64], Gen.Bool).Sample(
            (steps, isNegative) =>
            {
                var text = (isNegative ? "-" : "") + LengthFormat.Mixed(steps, 64) + " in";

                var mm = LengthText.Parse(text, null).Value.Length.Millimetres;

                mm.ShouldBe((double)(steps * 25.4m / 64 * (isNegative ? -1 : 1)));
            },
            iter: 2000);

    [Fact]
    public void Sixteenths_are_written_and_read_back_unchanged() =>
        Gen.Int[-2000, 2000].Sample(
            steps =>
            {
                var text = LengthFormat.Inches(Length.FromInches(steps / 16.0));

                LengthText.Parse(text, null).Value.Length.Inches.ShouldBe(steps / 16.0, 1e-12);
            },
            iter: 2000);

    [Fact]
    public void Tenths_of_a_millimetre_read_back_exactly_in_every_metric_unit() =>
        Gen.Int[0, 100_000].Sample(
            tenths =>
            {
                var mm = tenths / 10m;

                Read($"{mm} mm").ShouldBe((double)mm);
                Read($"{mm / 10} cm").ShouldBe((double)mm);
                Read($"{mm / 1000} m").ShouldBe((double)mm);
            },
            iter: 1000);

    [Fact]
    public void Random_text_is_read_or_refused_with_a_place_inside_it_and_never_throws()
    {
        string[] words = ["3", "1/2", "-", " ", "in", "mm", "'", "\"", ".", ",", "/", "0", "ft", "e", "∞", "nan", "°", "99999999999", "±", "\t", "\n", "\u202E", "\uD800", "x"];
        var pieces = Gen.Int[0, words.Length - 1].Select(i => words[i]);

        pieces.Array[0, 8].Sample(
            parts =>
            {
                var text = string.Concat(parts);

                var result = LengthText.Parse(text, LengthUnit.Millimetre);

                if (result.TryGet(out var reading, out var fault)) double.IsFinite(reading.Length.Millimetres).ShouldBeTrue();
                else (fault.Offset >= 0 && fault.Offset + fault.Extent <= text.Length && fault.Message.Length > 0 && fault.Help.Length > 0).ShouldBeTrue(text);
            },
            iter: 20_000);
    }

    [Fact]
    public void A_refused_text_has_no_value()
    {
        var result = LengthText.Parse("25,4 mm", null);

        result.IsRead.ShouldBeFalse();
        Should.Throw<InvalidOperationException>(() => result.Value);
    }

    private static double Read(string text) => LengthText.Parse(text, null).Value.Length.Millimetres;
}
