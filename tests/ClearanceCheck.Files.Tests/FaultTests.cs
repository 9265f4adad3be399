namespace ClearanceCheck.Files.Tests;

/// <summary>Every message of the room, whole, and that a faulty file never becomes a vehicle.</summary>
public sealed class FaultTests
{
    public static TheoryData<string, string, string> Cases { get; } = new()
    {
        { "other-format", "format: 1", "format: 2" },
        { "no-axle", "layout: three-link", "layout: three-lnik" },
        { "other-scope", "scope: [ rear ]", "scope: [ raer ]" },
        { "not-tied-to-ride", "  ride: { on: level-floor, hub-to-fender: { rear-left: 640 mm, rear-right: 641 mm } }", "  ride: { on: level-floor, hub-to-fender: { rear-left: 640 mm } }" },
        { "wrong-side", "lower-link-left-axle: [-590, 505, -452]", "lower-link-left-axle: [-590, -505, -452]" },
        { "touches-nothing", "    name: Tailpipe over the axle", "    name: Tailpipe over the axle\n    touches: [ axle-brake-lime ]" },
        { "clip-beyond-path", "clips: [ 1, 3, 5 ]", "clips: [ 1, 3, 6 ]" },
        { "one-point-path", "      - [-612, 660, -402]\n      - [-612, -660, -404]", "      - [-612, 660, -402]" },
        { "no-such-file", "path-from: exhaust.csv", "path-from: exhaust2.csv" },
        { "outside-folder", "path-from: exhaust.csv", "path-from: ../exhaust.csv" },
        { "too-few-rows", "  tailpipe:\n", "  tail-pipe:\n" },
        { "closed-not-shorter", "    closed: 305 mm\n    open: 520 mm\n    upper: { body: chassis, at: [-700, 400, 60] }", "    closed: 520 mm\n    open: 305 mm\n    upper: { body: chassis, at: [-700, 400, 60] }" },
        { "crushed-to-nothing", "    height: 75 mm\n    frame: { body: chassis, at: [-600, 455, -118] }", "    height: 75 mm\n    crush: 80 mm\n    frame: { body: chassis, at: [-600, 455, -118] }" },
        { "same-place-twice", "lower: { body: rear/axle, at: [-560, 150, -372] }", "lower: { body: rear/axle, at: [-482, 112, -120] }" },
        { "unknown-body", "body: exhaust", "body: exhuast" },
        { "unknown-kind", "kind: axle-tube", "kind: axel-tube" },
        { "missing-point", "        track-bar-axle: [-668, -445, -320]\n", "" },
        { "decimal-comma", "free-length: 262 mm            # rubber only, ferrule to ferrule", "free-length: 26,2 mm" },
        { "far-out-of-range", "free-length: 262 mm", "free-length: 1000000000 mm" },
        { "joint-limit-out-of-range", "    upper: { body: chassis, at: [-700, 400, 60] }", "    joint-limit: 95 deg\n    upper: { body: chassis, at: [-700, 400, 60] }" },
        { "joint-limit-without-unit", "    upper: { body: chassis, at: [-700, 400, 60] }", "    joint-limit: 25\n    upper: { body: chassis, at: [-700, 400, 60] }" },
        { "drive-unknown", "  load: empty", "  drive: rear-wheel\n  load: empty" },
        { "no-path", "    path-from: exhaust.csv\n", "" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_fault_gets_its_one_message(string name, string old, string fresh)
    {
        InspectionReading reading = FaultyFile.Read((old, fresh));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void All_faults_of_a_file_are_said_at_once()
    {
        InspectionReading reading = FaultyFile.Read(
            ("kind: axle-tube", "kind: axel-tube"), ("clips: [ 1, 3, 5 ]", "clips: [ 1, 3, 6 ]"), ("free-length: 262 mm", "free-lenght: 262 mm"));

        reading.Diagnostics.Ordered.Count.ShouldBe(3);
    }

    [Fact]
    public void A_repeated_point_is_a_note_and_the_file_can_be_used()
    {
        InspectionReading reading = FaultyFile.Read(("      - [-420, 340, -96]\n", "      - [-420, 340, -96]\n      - [-420, 340, -96]\n"), ("clips: [ 1, 2, 4, 6 ]", "clips: [ 1, 2, 5, 7 ]"));

        reading.Vehicle.ShouldNotBeNull();
        Golden.Matches("repeated-point", reading.Messages());
    }

    [Theory]
    [InlineData("part,x,y,z\ntailpipe,0,0,0\ntailpipe,1x,0,0\n", "table-bad-number")]
    [InlineData("part,x,y,z,in\ntailpipe,0,0,0,ride\ntailpipe,10,0,0,rdie\n", "table-unknown-state")]
    [InlineData("part,x,y\ntailpipe,0,0\n", "table-missing-column")]
    public void A_fault_in_a_table_stands_at_its_own_place(string table, string name)
    {
        InspectionReading reading = FaultyFile.Read(table);

        reading.Vehicle.ShouldBeNull();
        Golden.Matches(name, reading.Messages());
    }

    [Theory]
    [InlineData("      lower: { kind: rod, between: [ chassis, chassis ], at: [ [0, 0, 0], [1, 0, 0] ] }", "free-joined-to-itself")]
    [InlineData("      lower: { kind: rod, between: [ chassis, rear/axle ], at: [ [0, 0, 0] ] }", "free-points-of-joint")]
    [InlineData("      lower: { kind: hinge, between: [ chassis, rear/axle ], at: [ [0, 0, 0] ] }", "free-hinge-without-axis")]
    public void A_fault_in_a_free_layout_is_named(string joint, string name)
    {
        string free = $"""
            layout: free
                bodies: [ axle ]
                joints:
            {joint}
                wheels: {"{ left: { body: rear/axle, hub: [0, 700, 0] }, right: { body: rear/axle, hub: [0, -700, 0] } }"}
                travel:
            """;
        InspectionReading reading = FaultyFile.Read(("layout: three-link\n    travel:", free), (PointsBlock(), ""));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches(name, reading.Messages());
    }

    private static string PointsBlock()
    {
        string text = System.Text.Encoding.UTF8.GetString(ClearanceCheck.Tests.Shared.FixtureFiles.Bytes("one-line", "inspection.yaml").Span);
        int from = text.IndexOf("    points:\n", StringComparison.Ordinal), to = text.IndexOf("\nparts:", StringComparison.Ordinal);
        return text[from..to];
    }
}
