using System.Reflection;
using ClearanceCheck.Documents;

namespace ClearanceCheck.Scans.Tests;

/// <summary>Every message of the room, whole, and that a faulty file never becomes a scan.</summary>
public sealed class FaultTests
{
    // What a read may take beyond a copy of its file: heads, tables and the library's document of a small mesh.
    private const long MostOverhead = 1_000_000;

    // Letters that mean something in one of the formats.
    private const string Telling = "0123456789-.eE,[]{}\" \n";

    public static TheoryData<string> Names { get; } = [.. FaultCases.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_fault_gets_its_one_message(string name)
    {
        Reading reading = FaultCases.All[name]();

        (reading.Scan is null).ShouldBe(reading.Diagnostics.HasErrors);
        reading.Diagnostics.Ordered.ShouldContain(d => d.Id == "scan." + MessageOf(name));
        reading.Diagnostics.Ordered.Where(d => d.Severity == Severity.Error).Select(d => d.Id).Distinct().Count().ShouldBeLessThanOrEqualTo(1);
        Golden.Matches(name, reading.Messages);
    }

    [Fact]
    public void Every_message_of_the_room_has_a_case()
    {
        IEnumerable<string> messages = typeof(ScanMessages).GetMethods(BindingFlags.Static | BindingFlags.Public)
            .Where(m => m.ReturnType == typeof(void)).Select(m => Kebab(m.Name));

        messages.Except(FaultCases.All.Keys.Select(MessageOf)).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("stl-ends.bomb")]
    [InlineData("ply-too-many-points")]
    [InlineData("ply-count")]
    [InlineData("ply-count.other")]
    [InlineData("ply-list-length.bomb")]
    [InlineData("gltf-count.bomb")]
    [InlineData("gltf-count.indices")]
    public void A_small_file_that_claims_much_is_refused_before_memory_is_taken(string name)
    {
        _ = FaultCases.All[name]();
        long before = GC.GetAllocatedBytesForCurrentThread();
        _ = FaultCases.All[name]();

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(1_000_000);
    }

    [Fact]
    public void Only_a_bare_name_is_asked_for_beside_the_scan()
    {
        var asked = new List<string>();
        foreach (string uri in new[] { "../box.bin", "a/box.bin", "/box.bin", "a\\\\box.bin", "c:box.bin", "http://x/box.bin", "%2e%2e/box.bin", "..", "~box.bin", "", "box.bin" })
            Reading.Of("box.gltf", GltfBytes.Head(TestMesh.Box, uri), null, name =>
            {
                asked.Add(name);
                return null;
            });

        asked.ShouldBe(["box.bin"]);
    }

    [Theory]
    [MemberData(nameof(Formats.Names), MemberType = typeof(Formats))]
    public void A_broken_file_gives_a_scan_or_a_message(string format)
    {
        // The program's seed; another one for each format would show no more.
        var random = new Random(20_240_611);
        byte[] sound = Formats.All[format].Write(TestMesh.Box);
        int scans = 0, refused = 0;
        for (int i = 0; i < 2000; i++)
        {
            byte[] broken = Broken(sound, random);
            byte[] buffer = random.Next(2) == 0 ? GltfBytes.Buffer(TestMesh.Box) : Broken(GltfBytes.Buffer(TestMesh.Box), random);
            long before = GC.GetAllocatedBytesForCurrentThread();
            Reading reading = Reading.Of(Formats.All[format].Name, broken, null, name => name == Formats.BufferFile ? buffer : null);

            (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(MostOverhead, $"file {i}");
            (reading.Scan is null).ShouldBe(reading.Diagnostics.HasErrors, $"file {i}: {reading.Messages}");
            if (reading.Scan is { } scan)
            {
                scan.Points.ShouldAllBe(p => p.IsFinite);
                scan.Corners.ShouldAllBe(c => c >= 0 && c < scan.Points.Length);
                scans++;
            }
            else
            {
                refused++;
            }
        }

        // Both ends are met, or the files were not broken as meant.
        scans.ShouldBeGreaterThan(0);
        refused.ShouldBeGreaterThan(scans / 10);
    }

    private static byte[] Broken(byte[] sound, Random random)
    {
        byte[] broken = [.. sound];
        int flips = random.Next(1, 6);
        for (int k = 0; k < flips; k++) broken[random.Next(broken.Length)] = random.Next(3) == 0 ? (byte)Telling[random.Next(Telling.Length)] : (byte)random.Next(256);
        return random.Next(4) == 0 ? broken[..random.Next(broken.Length)] : broken;
    }

    private static string MessageOf(string name) => name.Split('.')[0];

    private static string Kebab(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i == 0 ? "" : "-") + char.ToLowerInvariant(c) : c.ToString()));
}
