namespace ClearanceCheck.Documents.Tests.Csv;

/// <summary>Tables that do not fit.</summary>
public sealed class CsvFaultTests
{
    [Fact]
    public void An_empty_table_says_what_to_start_with() =>
        Golden.Csv(
            "",
            """
            t.csv:1:1: error: The table is empty.
            help: Start with a row of column names: `part,x,y,z`.
            csv.empty
            """);

    [Fact]
    public void A_table_without_rows_is_refused() =>
        Golden.Csv(
            "part,x,y,z",
            """
            t.csv:1:1: error: The table has column names and no rows.
              part,x,y,z
              ^^^^^^^^^^
            help: Add a row for each point.
            csv.no-rows
            """);

    [Fact]
    public void A_missing_column_is_named() =>
        Golden.Csv(
            """
            part,x,y
            hose,1,2
            """,
            """
            t.csv:1:1: error: The column `z` is missing; the first row names the columns.
              part,x,y
              ^^^^^^^^
            help: Columns: part, x, y, z, in, within.
            csv.missing-column
            """);

    [Fact]
    public void A_misspelt_column_offers_the_nearest() =>
        Golden.Csv(
            """
            part,x,y,z,witin
            hose,1,2,3,4
            """,
            """
            t.csv:1:12: error: `witin` is not a column of this table.
              part,x,y,z,witin
                         ^^^^^
            help: Did you mean `within`? Columns: part, x, y, z, in, within.
            csv.unknown-column
            """);

    [Fact]
    public void A_column_without_a_name_is_refused() =>
        Golden.Csv(
            """
            part,x,y,z,
            hose,1,2,3,
            """,
            """
            t.csv:1:12: error: A column has no name.
              part,x,y,z,
                         ^
            help: Columns: part, x, y, z, in, within.
            csv.unknown-column
            """);

    [Fact]
    public void A_column_twice_names_both_places() =>
        Golden.Csv(
            """
            part,x,y,z,x
            hose,1,2,3,4
            """,
            """
            t.csv:1:12: error: The column `x` stands twice; neither was chosen.
              part,x,y,z,x
                         ^
            help: Keep the right one.
            see: t.csv:1:6: first named here
            csv.column-twice
            """);

    [Fact]
    public void Commas_and_semicolons_in_the_header_are_refused() =>
        Golden.Csv(
            """
            part;x,y;z
            hose;1;2;3
            """,
            """
            t.csv:1:1: error: The row of column names has commas and semicolons.
              part;x,y;z
              ^^^^^^^^^^
            help: Separate all columns with commas, or all with semicolons.
            csv.two-separators
            """);

    [Fact]
    public void Tabs_between_columns_are_refused() =>
        Golden.Csv(
            """
            part	x	y	z
            hose	1	2	3
            """,
            """
            t.csv:1:1: error: The columns are separated by tabs.
              part[tab]x[tab]y[tab]z
              ^^^^^^^^^^^^^^^^^^^^^^
            help: Save the table with commas or semicolons between columns.
            csv.tab-separator
            """);

    [Fact]
    public void A_decimal_comma_between_commas_is_one_cell_too_many() =>
        Golden.Csv(
            """
            part,x,y,z
            hose,25,4,2,3
            """,
            """
            t.csv:2:1: error: This row has 5 cells, and the first row names 4 columns.
              hose,25,4,2,3
              ^^^^^^^^^^^^^
            help: If a comma stands before decimals, write a point; put text that holds a comma in double quotes.
            csv.wrong-cell-count
            """);

    [Fact]
    public void A_decimal_comma_between_semicolons_shows_both_readings() =>
        Golden.Csv(
            """
            part;x;y;z
            hose;25,4;2;3
            """,
            """
            t.csv:2:6: error: `x`: Comma in `25,4`: 25.4 or 25 400?
              hose;25,4;2;3
                   ^^^^
            help: Write a point before the decimals, and no mark between thousands.
            number.decimal-comma
            """);

    [Fact]
    public void A_row_with_too_few_cells_is_refused() =>
        Golden.Csv(
            """
            part,x,y,z
            hose,1,2
            hose,1,2,3
            """,
            """
            t.csv:2:1: error: This row has 3 cells, and the first row names 4 columns.
              hose,1,2
              ^^^^^^^^
            help: Write one cell for each column, empty ones too; put text that holds the separator in double quotes.
            csv.wrong-cell-count
            """);

    [Fact]
    public void An_empty_cell_says_what_belongs_there() =>
        Golden.Csv(
            """
            part,x,y,z
            hose,,2,3
            """,
            """
            t.csv:2:6: error: `x` is empty in this row: forward of the datum.
              hose,,2,3
                   ^
            help: Fill the cell.
            csv.empty-cell
            """);

    [Fact]
    public void An_inch_mark_in_a_bare_cell_is_refused() =>
        Golden.Csv(
            """
            part,x,y,z
            hose,31",2,3
            """,
            """
            t.csv:2:8: error: A quote stands inside a cell that does not begin with one.
              hose,31",2,3
                     ^
            help: Write an inch as `31 in`; put a cell that holds quotes in double quotes, and double each quote in it.
            csv.stray-quote
            """);

    [Fact]
    public void An_unclosed_quote_is_marked_where_it_opens() =>
        Golden.Csv(
            """
            part,x,y,z
            "hose,1,2,3
            line,1,2,3
            """,
            """
            t.csv:2:1: error: This quote is opened and never closed.
              "hose,1,2,3
              ^
            help: Close it at the end of the cell; write an inch as `31 in`.
            csv.unclosed-quote
            """);

    [Fact]
    public void Text_after_a_closing_quote_is_refused() =>
        Golden.Csv(
            """
            part,x,y,z
            hose,"31" in,2,3
            """,
            """
            t.csv:2:10: error: ` in` stands after the closing quote of the cell.
              hose,"31" in,2,3
                       ^^^
            help: Put the whole cell in quotes, and double each quote in it; write an inch as `31 in`.
            csv.text-after-quote
            """);

    [Fact]
    public void A_bad_cell_is_marked_in_its_line_and_column() =>
        Golden.Csv(
            """
            part,x,y,z

            hose,1,2,3
            hose,1,2 foot,3
            """,
            """
            t.csv:4:10: error: `y`: `foot` is not a unit of length.
              hose,1,2 foot,3
                       ^^^^
            help: Did you mean `ft`? Units are mm, cm, m, in, ft.
            length.unknown-unit
            """);

    [Fact]
    public void A_place_off_the_vehicle_is_out_of_range() =>
        Golden.Csv(
            """
            part,x,y,z
            hose,1,2,99999
            """,
            """
            t.csv:2:10: error: `z`: `99999` is out of range for a place on a vehicle.
              hose,1,2,99999
                       ^^^^^
            help: It lies between -15000 mm and 15000 mm; look at the digits and the unit.
            doc.out-of-range
            """);
}
