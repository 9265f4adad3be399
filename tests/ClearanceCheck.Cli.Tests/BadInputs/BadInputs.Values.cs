namespace ClearanceCheck.Cli.Tests.BadInputs;

/// <summary>Rows about single values.</summary>
internal static partial class BadInputs
{
    private static IEnumerable<BadInput> Values =>
    [
        new(8, "not-finite", s =>
        {
            s.Change("inspection.yaml", "hub-left: [-612,", "hub-left: [.nan,");
            s.Change("inspection.yaml", "hub-right: [-612, -738", "hub-right: [-612, .inf");
            s.Change("inspection.yaml", "free-length: 262 mm", "free-length: 1e400 mm");
            s.Change("inspection.yaml", "travel: { droop: 180 mm", "travel: { droop: \u221E mm");
        }),
        new(9, "off-the-vehicle", s =>
        {
            s.Change("inspection.yaml", "hub-left: [-612,", "hub-left: [1e9 mm,");
            s.Change("inspection.yaml", "free-length: 262 mm", "free-length: 300 km");
            s.Change("inspection.yaml", "upper-link-frame: [70,", "upper-link-frame: [70000 mm,");
        }),
        BadInput.Changed(10, "decimal-comma", "free-length: 262 mm", "free-length: 25,4 mm"),
        new(11, "bare-number", s =>
        {
            s.Change("inspection.yaml", "unit: mm ", "#");
            s.Change("inspection.yaml", "free-length: 262 mm", "free-length: 31.6");
        }),
        new(12, "tire-103-mm-around", s => WithWheel(s, "tire: 285/75R16, tire-circumference: 103 mm")),
        new(12, "tire-size-of-33-mm", s => WithWheel(s, "tire: 33 mm")),
        new(13, "fractions", s =>
        {
            s.Change("inspection.yaml", "outside-diameter: 3 in", "outside-diameter: 1/0 in");
            s.Change("inspection.yaml", "outside-diameter: 2-1/2 in", "outside-diameter: 3/4/8 in");
            s.Change("inspection.yaml", "free-length: 262 mm", "free-length: 31-9/8 in");
        }),
        BadInput.Changed(18, "hose-of-zero-length", "free-length: 262 mm", "free-length: 0 mm"),
        BadInput.Changed(18, "hose-ends-in-one-place", "at: [-560, 150, -372] }", "at: [-482, 112, -120] }"),
        BadInput.Changed(19, "path-of-one-point", "      - [-612, -660, -404]\n", ""),
        BadInput.Changed(19, "diameter-zero", "outside-diameter: 3 in", "outside-diameter: 0 in"),
        BadInput.Changed(19, "diameter-negative", "outside-diameter: 3 in", "outside-diameter: -3 in"),
        BadInput.Changed(22, "path-above-the-folder", "path-from: exhaust.csv", "path-from: ../../exhaust.csv"),
        BadInput.Changed(22, "absolute-path", "path-from: exhaust.csv", "path-from: /etc/hostname"),
        BadInput.Changed(22, "file-address", "path-from: exhaust.csv", "path-from: file:///etc/hostname"),
        new(22, "link-out", s =>
        {
            File.Delete(s.At("exhaust.csv"));
            File.CreateSymbolicLink(s.At("exhaust.csv"), Path.Combine(Workshop.FixtureFolder, "exhaust.csv"));
        }),
    ];

    private static void WithWheel(Workshop shop, string tire) =>
        shop.Change("inspection.yaml", "\nparts:", $"    wheel: {{ {tire}, rim-width: 8 in, offset: -10 mm, barrel: [[192, -92], [192, 30], [180, 112]], barrel-wall: 6 mm, disc: [[57, 0], [150, 38], [180, 60]], disc-wall: 9 mm }}\n\nparts:");
}
