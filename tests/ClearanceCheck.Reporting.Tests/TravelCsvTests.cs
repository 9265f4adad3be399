using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests;

public sealed class TravelCsvTests
{
    [Fact]
    public void Every_line_has_as_many_cells_as_the_heading_and_the_first_columns_are_always_the_same()
    {
        string[][] rear = Cells(SampleTravel.Rear()), both = Cells(SampleTravel.Rear(), SampleTravel.SteeredFront());

        both.ShouldAllBe(line => line.Length == both[0].Length);
        both.Length.ShouldBe(5);
        rear[0].Take(22).ShouldBe(both[0].Take(22));
        both[0][^1].ShouldBe("front-shaft.second-turn (deg)");
        Cells()[0].ShouldBe(both[0].Take(22));
    }

    [Fact]
    public void A_value_stands_under_the_name_of_its_column_and_what_is_not_known_stays_empty()
    {
        string[][] lines = Cells(SampleTravel.Rear(), SampleTravel.SteeredFront());

        string Value(int line, string column) => lines[line][Array.IndexOf(lines[0], column)];
        Value(2, "left.travel (mm)").ShouldBe("-107.2455");
        Value(2, "rear-shock-left.length (mm)").ShouldBe("526.4");
        Value(2, "right.hub-to-fender (mm)").ShouldBeEmpty();
        Value(1, "beyond").ShouldBe("rear-shock-left at full length by 4.2 mm");
        Value(3, "left.travel (mm)").ShouldBeEmpty();
        Value(4, "steer (deg)").ShouldBe("31");
        Value(4, "axle").ShouldBe("front");
    }

    [Theory]
    [InlineData("=1+2", "'=1+2")]
    [InlineData("@cmd", "'@cmd")]
    [InlineData("a \"b\", c", "\"a \"\"b\"\", c\"")]
    public void A_typed_name_is_a_text_in_a_table_program_and_not_a_formula(string typed, string cell) =>
        TravelCsv.Write(SampleResult.Whole() with { Travel = [SampleTravel.SteeredFront() with { Axle = typed }] }).Split('\n')[1].ShouldStartWith(cell + ",");

    // Good for lines whose quoted cells hold no comma.
    private static string[][] Cells(params TravelTable[] tables)
    {
        TravelTable[] plain = [.. tables.Select(t => t with { Rows = [.. t.Rows.Select(r => r with { EndedBy = [] })] })];
        return [.. TravelCsv.Write(SampleResult.Whole() with { Travel = [.. plain] }).TrimEnd('\n').Split('\n').Select(line => line.Split(','))];
    }
}
