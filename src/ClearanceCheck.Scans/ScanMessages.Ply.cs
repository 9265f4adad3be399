namespace ClearanceCheck.Scans;

/// <summary>Messages about PLY.</summary>
internal static partial class ScanMessages
{
    public static void PlyStart(ScanFile file) => file.Error(
        "scan.ply-start", $"`{file.Name}` does not start with the line `ply`, so it is no PLY file.", "Name the file by its real format, or export it again.");

    public static void PlyHeaderLine(ScanFile file, int line, string text) => file.Error(
        "scan.ply-header-line",
        $"Line {line} of the header of `{file.Name}` can't be read: `{text}`.",
        "Due are format, then each element once with its count and its properties, then end_header.");

    public static void PlyHeaderEnds(ScanFile file) => file.Error(
        "scan.ply-header-ends", $"The header of `{file.Name}` has no line `end_header` within its first {Math.Min(file.Length, ScanLimits.MostHeader)} bytes.", ExportAgain);

    public static void PlyNoCoordinates(ScanFile file) => file.Error(
        "scan.ply-no-coordinates", $"The points of `{file.Name}` lack x, y or z.", "Export an element `vertex` with the properties x, y and z, one number each.");

    public static void PlyNoCorners(ScanFile file) => file.Error(
        "scan.ply-no-corners", $"The faces of `{file.Name}` do not list their corners as whole numbers.", "Export an element `face` with a list `vertex_indices` of whole numbers.");

    public static void PlyStrips(ScanFile file) => file.Error(
        "scan.ply-strips", $"`{file.Name}` holds strips of triangles, which are not read.", "Export faces instead (`vertex_indices`).");

    public static void PlyTooManyPoints(ScanFile file, long claimed) => file.Error(
        "scan.ply-too-many-points", $"`{file.Name}` claims {claimed} points; {ScanLimits.MostPoints} are read at most.", "Thin the mesh out, or cut away what is far from every moving part.");

    public static void PlyCount(ScanFile file, string element, long claimed, long bytes) => file.Error(
        "scan.ply-count", $"The header of `{file.Name}` claims {claimed} rows of `{element}`, more than the {bytes} bytes after it can hold.", ExportAgain);

    public static void PlyEnds(ScanFile file) => file.Error("scan.ply-ends", $"`{file.Name}` ends before the last row that its header claims.", ExportAgain);

    public static void PlyGoesOn(ScanFile file) => file.Error(
        "scan.ply-goes-on", $"`{file.Name}` goes on after the last row that its header claims: part of the surface would be missing.", ExportAgain);

    public static void PlyIndex(ScanFile file, double found) => file.Error(
        "scan.ply-index", $"A face of `{file.Name}` names the point {Number(found)}; due is a whole number.", ExportAgain);

    public static void PlyListLength(ScanFile file, string list, double found) => file.Error(
        "scan.ply-list-length", $"A list `{list}` of `{file.Name}` claims {Number(found)} entries, which it can't have in the bytes that are left.", ExportAgain);

    public static void PlyFanned(ScanFile file, int faces) => file.Note(
        "scan.ply-fanned",
        $"Faces of `{file.Name}` with more than three corners, which are read as fans of triangles around their first corner: {faces}.",
        "Export triangles when a face is not flat and the difference matters.");

    public static void PlyTooFewCorners(ScanFile file, int faces) => file.Note(
        "scan.ply-too-few-corners", $"Faces of `{file.Name}` with fewer than three corners, which are left out: {faces}.", "Look at the scan if something is missing.");

    public static void PlyUnusedPoints(ScanFile file, int points) => file.Note(
        "scan.ply-unused-points", $"Points of `{file.Name}` that belong to no face and are left out: {points}.", "Look at the scan if something is missing.");

    private static string Number(double value) => double.IsFinite(value) ? Shortest(value) : "NaN";
}
