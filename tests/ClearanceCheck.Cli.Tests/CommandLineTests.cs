namespace ClearanceCheck.Cli.Tests;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("inspect")]
    [InlineData("inspect", "a.yaml", "--threads", "0")]
    [InlineData("inspect", "a.yaml", "--threads", "many")]
    [InlineData("inspect", "a.yaml", "--format", "html,pdf")]
    [InlineData("inspect", "a.yaml", "--fail-at", "grave")]
    [InlineData("inspect", "a.yaml", "--no-such-option")]
    [InlineData("measure", "a.yaml", "--format", "yaml")]
    [InlineData("weather")]
    public void What_is_typed_wrong_ends_with_2_and_says_so_on_standard_error(params string[] args)
    {
        using var shop = new Workshop();

        Answer answer = shop.Run(args);

        answer.Status.ShouldBe(2);
        answer.Output.ShouldBeEmpty();
        answer.Error.ShouldContain("--help");
        answer.Error.Split('\n')[0].Length.ShouldBeGreaterThan(10);
    }

    [Fact]
    public void A_name_that_starts_with_an_at_sign_is_a_file_and_no_list_of_arguments()
    {
        using var shop = new Workshop();
        shop.Write("args", "schema\n--of\npose\n");

        Answer answer = shop.Run("pose", "@args");

        answer.Status.ShouldBe(2);
        answer.Error.ShouldContain("@args");
        shop.Run("@args").Status.ShouldBe(2);
    }

    [Theory]
    [InlineData("--help", "inspect")]
    [InlineData("--version", "0.")]
    public void Help_and_version_are_results(string option, string says)
    {
        using var shop = new Workshop();

        Answer answer = shop.Run(option);

        answer.Status.ShouldBe(0);
        answer.Output.ShouldContain(says);
        answer.Error.ShouldBeEmpty();
    }

    [Fact]
    public void A_fault_of_the_program_is_one_sentence_a_log_file_and_3()
    {
        using var shop = new Workshop { BrokenInput = new InvalidOperationException("made to fail") };

        Answer answer = shop.Run("inspect", "-");

        answer.Status.ShouldBe(3);
        answer.Output.ShouldBeEmpty();
        answer.Error.ShouldNotContain("made to fail");
        answer.Error.TrimEnd().Split('\n').Length.ShouldBe(1);
        string log = shop.Names(".").Single(n => n.EndsWith(".log", StringComparison.Ordinal));
        answer.Error.ShouldContain(log);
        shop.Read(log).ShouldContain("made to fail");
    }
}
