namespace ClearanceCheck.Scans;

/// <summary>Messages about STL.</summary>
internal static partial class ScanMessages
{
    public static void StlTooShort(ScanFile file) => file.Error(
        "scan.stl-too-short", $"`{file.Name}` is {file.Length} bytes long and does not start with `solid`; a binary STL has {Stl.BinaryStl.HeadLength} bytes before its first triangle.", ExportAgain);

    public static void StlEnds(ScanFile file, uint claimed, long whole) => file.Error(
        "scan.stl-ends",
        $"`{file.Name}` claims {claimed} triangles at byte 80, which take {Stl.BinaryStl.LengthOf(claimed)} bytes; it ends after {file.Length}, with {whole} whole triangles.",
        ExportAgain);

    public static void StlGoesOn(ScanFile file, uint claimed) => file.Error(
        "scan.stl-goes-on",
        $"`{file.Name}` claims {claimed} triangles at byte 80, which take {Stl.BinaryStl.LengthOf(claimed)} bytes, but it is {file.Length} bytes long: part of the surface would be missing.",
        ExportAgain);

    public static void StlWord(ScanFile file, int line, string found, string wanted) => file.Error(
        "scan.stl-word", $"Line {line} of `{file.Name}` has `{found}` where `{wanted}` is due.", ExportAgain);

    public static void StlTextEnds(ScanFile file, int line, string wanted) => file.Error(
        "scan.stl-text-ends", $"`{file.Name}` ends in line {line}, where `{wanted}` is due.", ExportAgain);

    public static void TextNumber(ScanFile file, int line, string found) => file.Error(
        "scan.text-number",
        $"Line {line} of `{file.Name}` has `{found}` where a number is due.",
        found.Contains(',', StringComparison.Ordinal) ? "Export with a point before the decimals." : ExportAgain);
}
