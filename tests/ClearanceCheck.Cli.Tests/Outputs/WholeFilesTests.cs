using ClearanceCheck.Cli.Outputs;

namespace ClearanceCheck.Cli.Tests.Outputs;

public sealed class WholeFilesTests
{
    [Fact]
    public void Files_replace_older_ones_and_nothing_else_is_left()
    {
        using var shop = new Workshop();
        shop.Write("d/a", "old");

        WholeFiles.Write(shop.At("d"), [WholeFiles.Text("a", "new"), WholeFiles.Text("b/c", "two")]);

        shop.Read("d/a").ShouldBe("new");
        shop.Read("d/b/c").ShouldBe("two");
        shop.Names("d").ShouldBe(["a", "b"]);
        shop.Names("d/b").ShouldBe(["c"]);
    }

    [Fact]
    public void When_one_can_t_be_written_the_others_stay_as_they_were()
    {
        using var shop = new Workshop();
        shop.Write("d/a", "old");
        Directory.CreateDirectory(shop.At("d/b"));

        Should.Throw<IOException>(() => WholeFiles.Write(shop.At("d"), [WholeFiles.Text("a", "new"), WholeFiles.Text("b", "two")]));

        shop.Read("d/a").ShouldBe("old");
        shop.Names("d").ShouldBe(["a", "b"]);
    }

    [Fact]
    public void A_report_that_can_t_be_written_is_said_and_ends_with_2()
    {
        using Workshop shop = Workshop.WithFixture();
        shop.Write("taken", "a file");

        Answer answer = shop.Run("inspect", "inspection.yaml", "--out", "taken");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("Nothing was written into taken");
        shop.Read("taken").ShouldBe("a file");
    }
}
