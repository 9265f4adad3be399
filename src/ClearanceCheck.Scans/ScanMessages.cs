using ClearanceCheck.Geometry;
using ClearanceCheck.Units;

namespace ClearanceCheck.Scans;

/// <summary>Every message about claims and about what all formats share, one method a fault; the formats' own stand in the other parts.</summary>
internal static partial class ScanMessages
{
    private const string ExportAgain = "Copy the file again, or export it again from the scanning program.";

    public static void OtherFormat(ScanFile file) => file.Error(
        "scan.other-format", $"The ending of `{file.Name}` is none of the formats of scans.", "Export the scan as .stl, .ply, .glb or .gltf.");

    public static void EmptyFile(ScanFile file) => file.Error("scan.empty-file", $"`{file.Name}` is empty.", ExportAgain);

    public static void TooLarge(ScanFile file, long bytes) => file.Error(
        "scan.too-large",
        $"`{file.Name}` holds {bytes} bytes with its buffers; {ScanLimits.MostBytes} are read at most.",
        $"Thin the mesh out to {ScanLimits.MostTriangles} triangles or fewer.");

    public static void TooManyTriangles(ScanFile file, long? claimed) => file.Error(
        "scan.too-many-triangles",
        claimed is { } count ? $"`{file.Name}` claims {count} triangles; {ScanLimits.MostTriangles} are read at most." : $"`{file.Name}` has more than {ScanLimits.MostTriangles} triangles.",
        "Thin the mesh out, or cut away what is far from every moving part.");

    public static void TooManyPoints(ScanFile file) => file.Error(
        "scan.too-many-points",
        $"`{file.Name}` has more than {ScanLimits.MostPoints} different points.",
        "Thin the mesh out, or cut away what is far from every moving part.");

    public static void NoTriangles(ScanFile file) => file.Error(
        "scan.no-triangles", $"`{file.Name}` has no triangles, so it has no surface to measure to.", "Export a mesh: a cloud of points must be made into triangles first.");

    public static void NotFinite(ScanFile file, string where) => file.Error(
        "scan.not-finite", $"{Sentence(where)} of `{file.Name}` has a coordinate that is not a finite number.", ExportAgain);

    public static void NoSuchPoint(ScanFile file, string where, long index, int points) => file.Error(
        "scan.no-such-point",
        $"{Sentence(where)} of `{file.Name}` names point {index}, but {(points == 0 ? "there is none" : $"the points are 0 to {points - 1}")}.",
        ExportAgain);

    public static void OutOfRange(ScanFile file, Vector3d point, bool fromVehicle) => file.Error(
        "scan.out-of-range",
        $"The point ({Shortest(point.X)}, {Shortest(point.Y)}, {Shortest(point.Z)}) of `{file.Name}` lies more than a kilometre from the {(fromVehicle ? "vehicle's" : "file's own")} zero when read in {file.Claims.Unit.Symbol()}.",
        fromVehicle ? "Look at the unit and at the shift, or remove stray points from the scan." : "Look at the unit, remove stray points, or move the scan near its zero in the scanning program: far from it points are stored in coarse steps.");

    public static void AxesNotSquare(ScanFile file) => file.Error(
        "scan.axes-not-square",
        $"Up ({file.Claims.Up.Word()}) and forward ({file.Claims.Forward.Word()}) of `{file.Name}` lie on one line.",
        "Name two axes that are square to each other, such as up +z and forward +x.");

    public static void ShiftNotFinite(ScanFile file) => file.Error(
        "scan.shift-not-finite", $"The shift of `{file.Name}` is not a finite number.", "Type where the file's zero lies on the vehicle, in millimetres.");

    public static void NoSize(ScanFile file) => file.Error(
        "scan.no-size",
        $"No length of the scanned thing is typed for `{file.Name}`, so a wrong unit or axis would not be seen.",
        "Measure the thing once with a tape and type that length, along what it was measured, and how near the scan must be.");

    public static void SizeNotPositive(ScanFile file, ScanSize size) => file.Error(
        "scan.size-not-positive", $"The length {Along(size.Side)} that is typed for `{file.Name}` must be more than zero.", "Measure the thing with a tape and type that length.");

    public static void SizeTooLoose(ScanFile file, ScanSize size) => file.Error(
        "scan.size-too-loose",
        $"The length {Along(size.Side)} of `{file.Name}` is typed as {Millimetres(size.LengthMm)}, within {Millimetres(size.WithinMm)}: that must be more than zero, and a tenth of the length at most.",
        "Type how far the scan may be from the tape; choose a longer length when a tenth of this one is too little.");

    public static void SizeDiffers(ScanFile file, ScanSize size, double measured, LengthUnit? fitting, ScanSide? side)
    {
        string otherwise = fitting is { } unit ? $"; it would fit if the file were in {UnitWord(unit)}"
            : side is { } other ? $"; it would fit {Along(other)}" : "; in no other unit would every typed length fit";
        file.Error(
            "scan.size-differs",
            $"`{file.Name}` is {Millimetres(measured)} long {Along(size.Side)}, but {Millimetres(size.LengthMm)} (within {Millimetres(size.WithinMm)}) is typed{otherwise}.",
            fitting is { } right ? $"Type the unit {right.Symbol()} when that is what the scanning program writes, or measure again."
                : side is not null ? "Look at the axes that are typed for up and forward, or measure again."
                : "Measure the thing again, and look for stray parts in the scan.");
    }

    public static void FlatTriangles(ScanFile file, int flat, int all) => file.Note(
        "scan.flat-triangles", $"Triangles of `{file.Name}` without area, which are kept: {flat} of {all}.", "Nothing needs to be done: their edges and corners are measured to like all others.");

    private static string Along(ScanSide side) => side switch
    {
        ScanSide.X => "along x",
        ScanSide.Y => "along y",
        ScanSide.Z => "along z",
        _ => "along its longest side",
    };

    private static string UnitWord(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => "millimetres",
        LengthUnit.Centimetre => "centimetres",
        LengthUnit.Metre => "metres",
        LengthUnit.Inch => "inches",
        _ => "feet",
    };

    private static string Millimetres(double mm) => double.IsFinite(mm) ? NumberFormat.UpTo(mm, 1) + " mm" : "no number";

    private static string Shortest(double value) => NumberFormat.Shortest(value);

    private static string Sentence(string where) => char.ToUpperInvariant(where[0]) + where[1..];
}
