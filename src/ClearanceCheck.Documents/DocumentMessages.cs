using System.Globalization;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;

namespace ClearanceCheck.Documents;

/// <summary>What this room says about a file, one method a fault.</summary>
internal static class DocumentMessages
{
    private const double MillimetresPerInch = 25.4;

    public const string MissingSpaceId = "yaml.missing-space";

    private const string FirstLines = "Start with `format: 1`, then one `key: value` a line.";

    // The file as a whole.
    public static Diagnostic EmptyFile(SourceSpan at) => Diagnostic.Error("doc.empty-file", at, "The file is empty: it holds no key.", FirstLines);

    public static Diagnostic TooLong(SourceSpan at) =>
        Diagnostic.Error("doc.too-long", at, $"The file has more than {Say(DocumentLimits.MostText / 1024 / 1024)} MB of text, and was not read.", "Check that it is the right file; scans and pictures stand in files of their own.");

    public static Diagnostic WrongEncoding(SourceSpan at, string encoding) => Diagnostic.Error("doc.encoding", at, $"The file is written in {encoding}.", "Save it as UTF-8.");

    public static Diagnostic Binary(SourceSpan at) => Diagnostic.Error("doc.binary", at, "The file is not text: it holds NUL characters.", "Check that it is the right file; save it as UTF-8 text.");

    public static Diagnostic NotUtf8(SourceSpan at) => Diagnostic.Error("doc.not-utf8", at, "The file is not UTF-8 text: what follows here cannot be decoded.", "Save it as UTF-8.");

    public static Diagnostic TopIsNoMapping(SourceSpan at) => Diagnostic.Error("doc.top-is-no-map", FirstLine(at), "The file does not start with a key.", FirstLines);

    public static Diagnostic SecondDocument(SourceSpan at) => EndReading(Diagnostic.Error("doc.second-document", at, "A second document begins here; a file holds one.", "Move it into a file of its own."));

    public static Diagnostic TooDeep(SourceSpan at) =>
        EndReading(Diagnostic.Error("doc.too-deep", at, $"The file is nested deeper than {Say(DocumentLimits.MostDepth)} levels at line {Say(at.Line)}.", "Look for brackets or indents that were never closed."));

    public static Diagnostic TooManyNodes(SourceSpan at) =>
        EndReading(Diagnostic.Error("doc.too-many-values", at, $"The file has more than {Say(DocumentLimits.MostNodes)} keys and values.", "Move long lists of points into a CSV file beside it."));

    /// <summary>Adds to a fault that nothing after it was read.</summary>
    public static Diagnostic EndReading(Diagnostic fault) =>
        fault with { Message = fault.Message + " Reading ended here; what follows is not checked yet.", EndsReading = true };

    // YAML's own syntax.
    public static Diagnostic TabIndent(SourceSpan at, int more) =>
        EndReading(Diagnostic.Error("yaml.tab-indent", at, more == 0 ? "A tab is used for indentation." : $"A tab is used for indentation, here and in {Say(more)} more {(more == 1 ? "line" : "lines")}.", "Use spaces, two for each level."));

    public static Diagnostic MissingSpace(SourceSpan at, string key, string line) =>
        Diagnostic.Error(MissingSpaceId, at, $"`{key}` needs a space after the colon.", $"Write `{Cut(line)}`.");

    public static Diagnostic UnclosedQuote(SourceSpan at) =>
        Diagnostic.Error("yaml.unclosed-quote", at, "This quote is opened and never closed.", "Close it on the same line; write an inch as `31 in`, or as `'31\"'` in quotes.");

    public static Diagnostic BadEscape(SourceSpan at) =>
        Diagnostic.Error("yaml.backslash", at, "A backslash in double quotes means something else to YAML.", "Use single quotes around text that holds a backslash.");

    public static Diagnostic TextAfterQuote(SourceSpan at, string bare, string quoted)
    {
        var isLength = LengthText.Parse(bare, LengthUnit.Inch).IsRead;
        return Diagnostic.Error("yaml.text-after-quote", at, $"`{Cut(at.Text)}` stands after the closing quote.", isLength ? $"Write `{Cut(bare)}` without quotes." : $"Put all of it into one pair of quotes: `{Cut(quoted)}`.");
    }

    public static Diagnostic ReservedStart(SourceSpan at, string quoted) =>
        Diagnostic.Error("yaml.reserved-start", at, $"A value cannot begin with {(at.Text == "`" ? "a backtick" : "`" + at.Text + "`")}: it has a meaning of its own in YAML.", $"Put the value in quotes: `{Cut(quoted)}`.");

    public static Diagnostic ColonInProse(SourceSpan at, string quoted) =>
        Diagnostic.Error("yaml.colon-in-text", at, "There is a second `: ` in this line, and YAML would take what is before it for a key.", $"Put the text in quotes: `{Cut(quoted)}`.");

    public static Diagnostic TooDeepIndent(SourceSpan at, string key) =>
        Diagnostic.Error("yaml.indent", at, $"`{Cut(key)}` is indented below a line that has its value already.", "Give it the indent of its neighbours, or end the line above with its colon.");

    public static Diagnostic UnevenIndent(SourceSpan at) =>
        Diagnostic.Error("yaml.uneven-indent", at, "The indent of this line fits none of the lines above.", "Give keys of one map the same number of spaces.");

    public static Diagnostic NoColon(SourceSpan at) =>
        Diagnostic.Error("yaml.no-colon", at, $"`{Cut(at.Text)}` is neither a key with its value nor a list item.", "Write `key: value`, or put the text in quotes after its key.");

    public static Diagnostic TextAfterValue(SourceSpan at) =>
        Diagnostic.Error("yaml.text-after-value", at, $"`{Cut(at.Text)}` stands where the value has ended.", "Put text that holds brackets or quotes into quotes as a whole, or take the rest away.");

    public static Diagnostic ItemAmongKeys(SourceSpan at) =>
        Diagnostic.Error("yaml.item-among-keys", at, "A list item stands where a key is needed.", "Put a key with a colon above the list, and indent the list below it.");

    public static Diagnostic ListOnKeyLine(SourceSpan at) =>
        Diagnostic.Error("yaml.list-on-key-line", at, "A list with dashes cannot begin on the line of its key.", "Start it on the next line, or write `[ first, second ]`.");

    public static Diagnostic UnclosedBracket(SourceSpan at, char closing) =>
        Diagnostic.Error("yaml.unclosed-bracket", at, $"This `{at.Text}` is never closed.", $"Add `{closing}` at the end of what it holds.");

    public static Diagnostic WrongBracket(SourceSpan at, SourceSpan open) =>
        Diagnostic.Error("yaml.wrong-bracket", at, $"`{at.Text}` does not close `{open.Text}`.", open.Text == "[" ? "Close a list with `]`." : "Close a map with `}`.", new RelatedSpan(open, "opened here"));

    public static Diagnostic ExtraBracket(SourceSpan at) =>
        Diagnostic.Error("yaml.extra-bracket", at, $"This `{at.Text}` closes nothing.", "Take it away, or put the text in quotes.");

    public static Diagnostic MissingComma(SourceSpan at) =>
        Diagnostic.Error("yaml.missing-comma", at, "A comma or a closing bracket is needed before this.", "Separate entries with a comma and a space; put text that holds `: ` into quotes.");

    public static Diagnostic EmptyBetweenCommas(SourceSpan at) =>
        Diagnostic.Error("yaml.empty-between-commas", at, "There is nothing before this comma.", "Write the value, or take the comma away.");

    public static Diagnostic Unreadable(SourceSpan at) =>
        Diagnostic.Error("yaml.unreadable", at, "The text cannot be read as YAML from here on.", "Look at indents, colons, brackets and quotes just before this place.");

    // What YAML allows and this format does not.
    public static Diagnostic Alias(SourceSpan at) =>
        Diagnostic.Error("doc.alias", at, $"`{Cut(at.Text)}` is a YAML alias; aliases are not used here.", "Write the value out, or put it in quotes if it is text.");

    public static Diagnostic Anchor(SourceSpan at, string name) =>
        Diagnostic.Error("doc.anchor", at, $"`&{Cut(name)}` is a YAML anchor; anchors are not used here.", "Write the value out wherever it is needed, or put it in quotes if it is text.");

    public static Diagnostic Tag(SourceSpan at, string tag) =>
        Diagnostic.Error("doc.tag", at, $"`{Cut(tag)}` is a YAML tag; tags are not used here.", "Take it away, or put the value in quotes if it is text.");

    public static Diagnostic DuplicateKey(SourceSpan at, SourceSpan first, string key) =>
        Diagnostic.Error("doc.duplicate-key", at, $"`{Cut(key)}` stands twice, in line {Say(first.Line)} and in line {Say(at.Line)}; neither was chosen.", "Keep the right one.", new RelatedSpan(first, "first defined here"));

    public static Diagnostic EmptyKey(SourceSpan at) =>
        Diagnostic.Error("doc.empty-key", at, "There is no key here.", "Write `key: value`.");

    public static Diagnostic KeyIsNoWord(SourceSpan at) =>
        Diagnostic.Error("doc.key-is-no-word", at, "A key has to be a word; here it is a list or a map.", "Write `key: value`.");

    public static Diagnostic StrayText(SourceSpan at, string text, string? before)
    {
        var isDigits = before is { Length: > 0 } && char.IsAsciiDigit(before[^1]) && text.Length > 0 && char.IsAsciiDigit(text[0]);
        if (isDigits) return Diagnostic.Error("doc.comma-in-number", at, $"`{Cut(text)}` stands alone after a comma: YAML would make it a key without a value.", $"If the comma was a decimal one, write `{Cut(before + "." + text)}`.");
        var help = before is null ? "Write `key: value`." : $"Put text that holds a comma in quotes: `{Cut(QuoteValue(before, text))}`.";
        return Diagnostic.Error("doc.key-without-value", at, $"`{Cut(text)}` stands alone between commas: YAML would make it a key without a value.", help);
    }

    public static Diagnostic NoValue(SourceSpan at, string key) =>
        Diagnostic.Error("doc.no-value", at, $"`{Cut(key)}` has no value.", "Write the value after the colon; leave the key out if there is none.");

    public static Diagnostic NoItem(SourceSpan at) =>
        Diagnostic.Error("doc.no-item", at, "This list item has no value.", "Write the value after the dash, or take the dash away.");

    public static Diagnostic NullWord(SourceSpan at, string word) =>
        Diagnostic.Error("doc.null", at, $"`{word}` means \"no value\" to YAML.", "Leave the key out, or put the word in quotes if it is text.");

    public static Diagnostic OverLines(SourceSpan at) =>
        Diagnostic.Error("doc.over-lines", at, "This value runs on over the next line without quotes.", "Put it in quotes, or check the indent and the colon of the next line.");

    public static Diagnostic CutByComment(SourceSpan at, string quoted) =>
        Diagnostic.Error("doc.cut-by-comment", at, "YAML drops everything from ` #` on, so this text would vanish.", $"If it belongs to the value, write `{Cut(quoted)}`; if it is a remark, give it a line of its own.");

    public static Diagnostic MixedSeparators(SourceSpan at, string left, string right) =>
        Diagnostic.Error("doc.mixed-separators", at, "Mixed separators: this comma has no space after it, others in the list do.", $"Write `{Cut(left)}.{Cut(right)}` if it is a decimal, `{Cut(left)}, {Cut(right)}` if they are two numbers.");

    // Values and their keys.
    public static Diagnostic UnknownKey(ScalarNode key, string? nearest, IReadOnlyList<string> known) =>
        Diagnostic.Error("doc.unknown-key", key.Span, $"`{Cut(key.Text)}` is not a key here.", (nearest is null ? "" : $"Did you mean `{nearest}`? ") + "Keys here: " + List(known) + ".");

    public static Diagnostic MissingKey(MappingNode mapping, string key, string what) =>
        Diagnostic.Error("doc.missing-key", mapping.Heading, $"`{key}` is missing in {mapping.Label}: {what}.", $"Add `{key}: ...`.");

    public static Diagnostic NeitherKey(MappingNode mapping, string first, string second, string what) =>
        Diagnostic.Error("doc.neither-key", mapping.Heading, $"Neither `{first}` nor `{second}` is in {mapping.Label}: {what}.", $"Write one of the two, `{first}: ...` or `{second}: ...`.");

    public static Diagnostic BothKeys(SourceSpan first, SourceSpan second, string firstKey, string secondKey) =>
        Diagnostic.Error("doc.both-keys", second, $"`{firstKey}` and `{secondKey}` say the same in two ways; only one can stand.", "Keep the right one.", new RelatedSpan(first, "the other one"));

    public static Diagnostic WrongShape(Node node, string needed, string help) =>
        Diagnostic.Error("doc.wrong-shape", FirstLine(node.Span), $"{Sentence(node.Label)}: {needed} is needed here, and this is {ShapeOf(node)}.", help);

    public static Diagnostic EmptyList(SequenceNode list) =>
        Diagnostic.Error("doc.empty-list", list.Span, $"{Sentence(list.Label)}: the list is empty.", "Write at least one item, or leave the key out.");

    public static Diagnostic WrongCount(SequenceNode list, int needed, string shape) =>
        Diagnostic.Error("doc.wrong-count", FirstLine(list.Span), $"{Sentence(list.Label)}: {Say(needed)} values are needed, and here {(list.Items.Count == 1 ? "is" : "are")} {Say(list.Items.Count)}.", $"Write {shape}; a point before decimals, a comma and a space between values.");

    public static Diagnostic Unread(ScalarNode node, ParseFault fault) =>
        Diagnostic.Error(fault.Id, node.Place(fault.Offset, fault.Extent), $"{Sentence(node.Label)}: {fault.Message}", fault.Help);

    public static Diagnostic OutOfRange(ScalarNode node, LengthRange range, LengthReading typed) =>
        Diagnostic.Error("doc.out-of-range", node.Span, $"{Sentence(node.Label)}: `{Cut(node.Text)}` is out of range for {range.What}.", $"{InOtherUnit(range, typed)}It lies between {Plain(range.Least)} and {Plain(range.Most)}; look at the digits and the unit.");

    // The same digits with the other unit of a tape, where that would be in range; it is only asked, never taken.
    private static string InOtherUnit(LengthRange range, LengthReading typed)
    {
        double inches = typed.Length.Millimetres / MillimetresPerInch, asInches = typed.Length.Millimetres * MillimetresPerInch;
        if (typed.Unit == LengthUnit.Millimetre && range.Holds(Length.FromMillimetres(asInches)))
            return $"Is it {NumberFormat.UpTo(typed.Length.Millimetres, 3)} in = {NumberFormat.UpTo(asInches, 0)} mm? ";
        return typed.Unit == LengthUnit.Inch && range.Holds(Length.FromMillimetres(inches)) ? $"Is it {NumberFormat.UpTo(inches, 3)} mm? " : "";
    }

    public static Diagnostic EmptyText(ScalarNode node) =>
        Diagnostic.Error("doc.empty-text", node.Span, $"{Sentence(node.Label)}: the text is empty.", "Write the text, or leave the key out.");

    public static Diagnostic NumberAsText(ScalarNode node) =>
        Diagnostic.Error("doc.number-as-text", node.Span, $"{Sentence(node.Label)}: an editor can change `{Cut(node.Text)}`, since it looks like a number.", $"Put it in quotes: `\"{Cut(node.Text)}\"`.");

    public static Diagnostic TextCut(ScalarNode node) =>
        Diagnostic.Note("doc.text-cut", FirstLine(node.Span), $"{Sentence(node.Label)}: the text is cut at {Say(DocumentLimits.MostShownText)} characters.", "Shorten it if the rest matters.");

    public static Diagnostic NotAnId(ScalarNode node)
    {
        var repaired = IdText.Repair(node.Text);
        return Diagnostic.Error("doc.not-an-id", node.Span, $"`{Cut(node.Text)}` is not an id.", "Use small letters, digits and dashes, a letter first, up to 60" + (repaired.Length == 0 ? "." : $": `{Cut(repaired)}`."));
    }

    public static Diagnostic UnknownWord(ScalarNode node, IReadOnlyCollection<string> allowed, string? nearest) =>
        Diagnostic.Error("doc.unknown-word", node.Span, $"{Sentence(node.Label)}: `{Cut(node.Text)}` is none of the words for this.", (nearest is null ? "" : $"Did you mean `{nearest}`? ") + "Words: " + List(allowed) + ".");

    public static Diagnostic WordTwice(Placed<string> word, Node first) =>
        Diagnostic.Error("doc.word-twice", word.Span, $"`{Cut(word.Value)}` stands twice in this list.", "Keep it once.", new RelatedSpan(first.Span, "first named here"));

    public static Diagnostic NotAPositiveInteger(ScalarNode node) =>
        Diagnostic.Error("doc.not-a-positive-integer", node.Span, $"{Sentence(node.Label)}: `{Cut(node.Text)}` is not a whole number from 1 on.", "Write digits only, such as `1` or `12`.");

    public static Diagnostic NotADate(ScalarNode node) =>
        Diagnostic.Error("doc.not-a-date", node.Span, $"{Sentence(node.Label)}: `{Cut(node.Text)}` is not a date of the calendar written year-month-day.", "Write for example `2031-04-02`.");

    public static Diagnostic OutsideFolder(ScalarNode node) =>
        Diagnostic.Error("doc.outside-folder", node.Span, $"{Sentence(node.Label)}: this path is outside the folder of the inspection.", "Put the file beside this one and write its name, such as `exhaust.csv`, with `/` between folders.");

    // Tables.
    public static Diagnostic EmptyTable(SourceSpan at, IReadOnlyList<string> required) =>
        Diagnostic.Error("csv.empty", at, "The table is empty.", $"Start with a row of column names: `{string.Join(',', required)}`.");

    public static Diagnostic NoRows(SourceSpan at) => Diagnostic.Error("csv.no-rows", at, "The table has column names and no rows.", "Add a row for each point.");

    public static Diagnostic TooManyRows(SourceSpan at) =>
        EndReading(Diagnostic.Error("csv.too-many-rows", at, $"The table has more than {Say(DocumentLimits.MostRows)} rows.", "Check that it is the right file."));

    public static Diagnostic TwoSeparators(SourceSpan at) =>
        Diagnostic.Error("csv.two-separators", at, "The row of column names has commas and semicolons.", "Separate all columns with commas, or all with semicolons.");

    public static Diagnostic TabSeparator(SourceSpan at) =>
        Diagnostic.Error("csv.tab-separator", at, "The columns are separated by tabs.", "Save the table with commas or semicolons between columns.");

    public static Diagnostic ColumnTwice(SourceSpan at, SourceSpan first, string name) =>
        Diagnostic.Error("csv.column-twice", at, $"The column `{Cut(name)}` stands twice; neither was chosen.", "Keep the right one.", new RelatedSpan(first, "first named here"));

    public static Diagnostic UnknownColumn(SourceSpan at, string name, string? nearest, IEnumerable<string> all) =>
        Diagnostic.Error("csv.unknown-column", at, name.Length == 0 ? "A column has no name." : $"`{Cut(name)}` is not a column of this table.", (nearest is null ? "" : $"Did you mean `{nearest}`? ") + "Columns: " + List([.. all]) + ".");

    public static Diagnostic MissingColumn(SourceSpan at, string name, IEnumerable<string> all) =>
        Diagnostic.Error("csv.missing-column", at, $"The column `{name}` is missing; the first row names the columns.", "Columns: " + List([.. all]) + ".");

    public static Diagnostic WrongCellCount(SourceSpan at, int cells, int names, bool hasCommaBetweenDigits) =>
        Diagnostic.Error("csv.wrong-cell-count", at, $"This row has {Say(cells)} {(cells == 1 ? "cell" : "cells")}, and the first row names {Say(names)} {(names == 1 ? "column" : "columns")}.", cells > names && hasCommaBetweenDigits ? "If a comma stands before decimals, write a point; put text that holds a comma in double quotes." : "Write one cell for each column, empty ones too; put text that holds the separator in double quotes.");

    public static Diagnostic EmptyCell(SourceSpan at, string column, string what) => Diagnostic.Error("csv.empty-cell", at, $"`{column}` is empty in this row: {what}.", "Fill the cell.");

    public static Diagnostic CellStrayQuote(SourceSpan at) =>
        Diagnostic.Error("csv.stray-quote", at, "A quote stands inside a cell that does not begin with one.", "Write an inch as `31 in`; put a cell that holds quotes in double quotes, and double each quote in it.");

    public static Diagnostic CellUnclosedQuote(SourceSpan at) =>
        Diagnostic.Error("csv.unclosed-quote", at, "This quote is opened and never closed.", "Close it at the end of the cell; write an inch as `31 in`.");

    public static Diagnostic CellTextAfterQuote(SourceSpan at) =>
        Diagnostic.Error("csv.text-after-quote", at, $"`{Cut(at.Text)}` stands after the closing quote of the cell.", "Put the whole cell in quotes, and double each quote in it; write an inch as `31 in`.");

    private static SourceSpan FirstLine(SourceSpan span) => span.Source.Span(span.Start, Math.Min(span.End, span.Source.EndOf(span.Line)));

    private static string ShapeOf(Node node) => node switch
    {
        SequenceNode => "a list",
        MappingNode => "a map",
        _ => "a single value",
    };

    private static string QuoteValue(string before, string text)
    {
        var colon = before.IndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? $"\"{before}, {text}\"" : $"{before[..colon]}: \"{before[(colon + 2)..].Trim('"', '\'')}, {text}\"";
    }

    private static string Sentence(string label) => char.ToUpperInvariant(label[0]) + label[1..];

    private static string List(IReadOnlyCollection<string> words)
    {
        var text = string.Join(", ", words);
        return text.Length <= 240 ? text : text[..text.LastIndexOf(", ", 240, StringComparison.Ordinal)] + " ...";
    }

    private static string Plain(Length length) => NumberFormat.UpTo(length.Millimetres, 3) + " mm";

    private static string Say(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Cut(string typed) => typed.Length <= 120 ? typed : typed[..117] + "...";
}
