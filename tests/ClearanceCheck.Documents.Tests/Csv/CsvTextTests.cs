using ClearanceCheck.Documents.Csv;
using ClearanceCheck.Units;
using CsCheck;

namespace ClearanceCheck.Documents.Tests.Csv;

public sealed class CsvTextTests
{
    [Theory]
    [InlineData("part,x,y,z,within\nhose,1,2.5,-3,\nline,4 in,5,6,2 mm\n")]
    [InlineData("part;x;y;z;within\r\nhose;1;2.5;-3;\r\nline;4 in;5;6;2 mm")]
    [InlineData("\uFEFFpart,x,y,z,within\n\n\nhose, 1 ,2.5,-3,\n   \n\"line\",\"4\"\"\",5,6,2 mm\n\n")]
    [InlineData("within,z,y,x,part\n,-3,2.5,1,hose\n2 mm,6,5,4 in,line\n")]
    public void Rows_are_read_by_the_names_of_their_columns(string text)
    {
        Show(text).ShouldBe("hose 1 mm 2.5 mm -3 mm -; line 101.6 mm 5 mm 6 mm 2 mm; ");
        Cultures.Under("de-DE", () => Show(text)).ShouldBe("hose 1 mm 2.5 mm -3 mm -; line 101.6 mm 5 mm 6 mm 2 mm; ");
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Every_cell_knows_its_place_whatever_ends_the_lines(string lineBreak)
    {
        var text = string.Join(lineBreak, "part,x,y,z", "", "\"a", "b\",1,2,3", "hose, 4 ,5,6", "");

        var table = CsvText.Read("t.csv", text, Golden.Columns, new DiagnosticBag(), LengthUnit.Millimetre)!;

        table.Rows.Count.ShouldBe(2);
        table.Rows[0].Optional("y").Node!.Span.ToString().ShouldBe("t.csv:4:6");
        table.Rows[1].Optional("x").Node!.Span.ToString().ShouldBe("t.csv:5:7");
        table.Rows[1].Optional("x").Node!.Span.Text.ShouldBe("4");
        table.Rows[1].Optional("x").Node!.Path.ShouldBe("row 2/x");
    }

    [Fact]
    public void Random_tables_are_read_or_refused_and_never_throw()
    {
        string[] words = ["part,x,y,z\n", "part;x;y;z\n", "hose", ",", ";", "1", "\"", "\"\"", "\n", "\r\n", "\r", " ", "\t", "25,4", "é", "\u202E", "\U0001F527"];
        var pieces = Gen.Int[0, words.Length - 1].Select(i => words[i]);

        pieces.Array[0, 20].Sample(
            parts =>
            {
                var text = string.Concat(parts);
                var diagnostics = new DiagnosticBag();

                var table = CsvText.Read("t.csv", text, Golden.Columns, diagnostics);

                (table is not null || diagnostics.HasErrors).ShouldBeTrue(text);
                DiagnosticRenderer.Render(diagnostics);
            },
            iter: 20_000);
    }

    [Fact]
    public void What_is_written_into_cells_is_read_back()
    {
        string[] words = ["a", "1", " ", ",", ";", "\"", "\n", "é"];
        var cell = Gen.Int[0, words.Length - 1].Select(i => words[i]).Array[1, 6].Select(string.Concat);

        Gen.Select(cell, cell).Sample(
            (first, second) =>
            {
                var text = $"part,x\n{Quote(first)},{Quote(second)}\nlast,1\n";

                var table = CsvText.Read("t.csv", text, new CsvColumns(["part", "x"], []), new DiagnosticBag())!;

                ((Nodes.ScalarNode)table.Rows[0].Optional("part").Node!).Text.ShouldBe(first);
                ((Nodes.ScalarNode)table.Rows[0].Optional("x").Node!).Text.ShouldBe(second);
                table.Rows.Count.ShouldBe(2);
            },
            iter: 2000);
    }

    [Fact]
    public void Twenty_thousand_rows_are_read_and_one_more_is_refused()
    {
        string Table(int rows) => "part,x,y,z\n" + string.Concat(Enumerable.Repeat("hose,1,2,3\n", rows));
        var diagnostics = new DiagnosticBag();

        CsvText.Read("t.csv", Table(DocumentLimits.MostRows), Golden.Columns, diagnostics)!.Rows.Count.ShouldBe(DocumentLimits.MostRows);
        diagnostics.Count.ShouldBe(0);
        CsvText.Read("t.csv", Table(DocumentLimits.MostRows + 1), Golden.Columns, diagnostics).ShouldBeNull();
        diagnostics.Ordered.ShouldHaveSingleItem().Id.ShouldBe("csv.too-many-rows");
    }

    private static string Quote(string cell) => "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    private static string Show(string text)
    {
        var diagnostics = new DiagnosticBag();
        var table = CsvText.Read("t.csv", text, Golden.Columns, diagnostics, LengthUnit.Millimetre)!;
        var shown = string.Concat(table.Rows.Select(row =>
            $"{row.Required("part", "the part").Id()!.Value} {Say(row, "x")} {Say(row, "y")} {Say(row, "z")} {Say(row, "within")}; "));
        return shown + DiagnosticRenderer.Render(diagnostics);
    }

    private static string Say(CsvRow row, string column) => row.Optional(column).Length()?.Value.Length.ToString() ?? "-";
}
