using ClearanceCheck.Cli.Tests.Reference;

namespace ClearanceCheck.Cli.Tests.Inputs;

public sealed class UnusableInputTests
{
    [Fact]
    public void All_faults_of_a_file_are_said_at_once_with_their_places_and_nothing_is_overwritten()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("clearance-report/report.html", "older report");
        shop.Change("inspection.yaml", "layout: three-link", "layout: three-lnk");
        shop.Change("inspection.yaml", "kind: exhaust-pipe", "kind: exhaust-pype");
        shop.Change("inspection.yaml", "closed: 305 mm", "closed: 305 mmm");

        Answer answer = shop.Run("inspect", "inspection.yaml");

        answer.Status.ShouldBe(2);
        answer.Output.ShouldBeEmpty();
        foreach (string typed in new[] { "three-lnk", "exhaust-pype", "305 mmm" })
        {
            int line = Array.FindIndex(shop.Read("inspection.yaml").Split('\n'), l => l.Contains(typed, StringComparison.Ordinal)) + 1;
            answer.Error.ShouldContain($"inspection.yaml:{line}:");
        }

        shop.Names("clearance-report").ShouldBe(["report.html"]);
        shop.Read("clearance-report/report.html").ShouldBe("older report");
    }

    [Theory]
    [InlineData("inspect")]
    [InlineData("pose")]
    [InlineData("measure")]
    public void A_missing_file_and_a_folder_are_told_apart(string command)
    {
        using var shop = new Workshop();
        Directory.CreateDirectory(shop.At("d"));

        Answer missing = shop.Run(command, "none.yaml"), folder = shop.Run(command, "d");

        missing.Status.ShouldBe(2);
        missing.Error.ShouldContain("There is no file none.yaml");
        folder.Status.ShouldBe(2);
        folder.Error.ShouldContain("is a folder");
    }

    [Fact]
    public void A_missing_link_is_said_with_the_axle_s_place()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", new ThreeLinkFile().Without("track-bar").Write());

        Answer answer = shop.Run("inspect", "axle.yaml");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("axle.yaml:9:3: error: A link of the axle rear is missing");
        answer.Error.ShouldContain("rear/axle");
        shop.Names("clearance-report").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("inspect")]
    [InlineData("pose")]
    [InlineData("measure")]
    public void A_state_that_the_links_do_not_reach_is_said_with_what_was_typed_there(string command)
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Change("inspection.yaml", "measured-in: hanging", "  dropped: { on: frame-lift, hub-to-fender: { rear-left: 1740 mm, rear-right: 1741 mm } }\nmeasured-in: hanging");
        shop.Change("inspection.yaml", "    name: Rear axle tube\n", "    name: Rear axle tube\n    in: dropped\n");

        Answer answer = shop.Run(command, "inspection.yaml");

        answer.Status.ShouldBe(2);
        answer.Output.ShouldBeEmpty();
        answer.Error.ShouldContain("inspection.yaml:20:58: error: The links of the axle rear don't let it stand as typed in the state dropped: left wheel 1100 mm into droop, right wheel 1100 mm into droop");
        answer.Error.ShouldContain("help: Read hub to fender again in dropped and at ride height");
        answer.Error.ShouldContain("see: inspection.yaml:20:79: right in dropped; inspection.yaml:19:56: left in ride");
        shop.Names("clearance-report").ShouldBeEmpty();
    }

    [Fact]
    public void A_superfluous_link_is_said_with_the_axle_s_place()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", new ThreeLinkFile().With("fifth", [-700, -245, 100], [-30, -200, 150]).Write());

        Answer answer = shop.Run("pose", "axle.yaml");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("axle.yaml:9:3: error: A link of the axle rear is superfluous");
        answer.Error.ShouldContain("travel");
    }

    [Fact]
    public void A_link_without_length_is_said_with_its_own_place()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", new ThreeLinkFile().With("upper", [-30, 255, 138], [-30, 255, 138]).Write());

        Answer answer = shop.Run("measure", "axle.yaml");

        answer.Status.ShouldBe(2);
        int line = Array.FindIndex(shop.Read("axle.yaml").Split('\n'), l => l.Contains("upper:", StringComparison.Ordinal)) + 1;
        answer.Error.ShouldContain($"axle.yaml:{line}:7: error: The joint upper of the axle rear has no length");
    }

    [Fact]
    public void A_steering_that_turns_the_wrong_body_is_said_at_the_steering()
    {
        using var shop = new Workshop();
        // The kingpin carries the knuckle, and its second body here is the axle, which does not turn on it.
        shop.Write("axle.yaml", SteeredFile.Write("").Replace("[ rear/axle, rear/knuckle ]", "[ rear/knuckle, rear/axle ]", StringComparison.Ordinal));

        Answer answer = shop.Run("pose", "axle.yaml");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("axle.yaml:22:5: error: The steering of the axle rear can't move: its links and joints already hold what it would turn.");
    }

    [Fact]
    public void A_loose_body_of_a_steered_axle_is_said_to_be_loose_with_the_steering_held()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", SteeredFile.Write("      tip: { kind: ball, between: [ rear/knuckle, rear/arm ], at: [ [100, 700, 0] ] }\n", ", arm"));

        Answer answer = shop.Run("pose", "axle.yaml");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("A link of the axle rear is missing: with both wheels held at a height and the steering held, rear/arm can still move.");
    }

    [Fact]
    public void A_joint_of_a_layout_without_length_is_said_at_its_first_point()
    {
        using var shop = new Workshop();
        shop.Write("axle.yaml", SteeredFile.WriteFirstLook(frame: "[55, -445, 83]", axle: "[55, -445, 83]"));

        Answer answer = shop.Run("pose", "axle.yaml");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("axle.yaml:18:25: error: The joint track-bar of the axle front has no length: two of its points are typed as the same one.");
    }

    [Theory]
    [InlineData("exhaust.csv", true)]
    [InlineData("folder/exhaust.csv", true)]
    [InlineData("exhaust.csv", false)]
    public void A_link_to_a_file_is_followed_inside_the_folder_only(string linked, bool leadsOut)
    {
        using Workshop shop = Workshop.WithFixture();
        using var other = new Workshop();
        string target = leadsOut ? other.At("secret.csv") : shop.At("kept/exhaust.csv");
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        File.Move(shop.At("exhaust.csv"), target);
        shop.Change("inspection.yaml", "path-from: exhaust.csv", "path-from: " + linked);
        if (linked.Contains('/', StringComparison.Ordinal))
        {
            // The folder is the link, not the file.
            File.Copy(target, other.At("exhaust.csv"));
            Directory.CreateSymbolicLink(shop.At("folder"), other.Folder);
        }
        else
        {
            File.CreateSymbolicLink(shop.At(linked), target);
        }

        Answer answer = shop.Run("pose", "inspection.yaml");

        answer.Status.ShouldBe(leadsOut ? 2 : 0);
        if (leadsOut) answer.Error.ShouldContain("leads out of the folder");
        else answer.Error.ShouldBeEmpty();
    }

    [Fact]
    public void A_file_that_is_too_long_is_refused_and_not_read_whole()
    {
        using var shop = new Workshop();
        shop.Write("long.yaml", new string('#', 5_000_000));

        Answer answer = shop.Run("pose", "long.yaml");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("long.yaml:1:1: error");
    }
}
