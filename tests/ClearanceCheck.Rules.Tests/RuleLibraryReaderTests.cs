using System.Collections.Immutable;
using System.Text;
using ClearanceCheck.Documents;
using ClearanceCheck.Quantities;
using CsCheck;

namespace ClearanceCheck.Rules.Tests;

public sealed class RuleLibraryReaderTests
{
    [Fact]
    public void A_shop_rule_needs_five_lines()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Libraries.Read(Libraries.Shop);

        diagnostics.Count.ShouldBe(0);
        Rule rule = library.ShouldNotBeNull().Rules.Single(r => r.Id == "line-near-pipe");
        rule.Title.ShouldBe("Line near pipe");
        rule.Severity.ShouldBe(Severity.Warning);
        rule.Part.Kinds.ShouldBe(["brake-line"]);
        rule.To.ShouldNotBeNull().Groups.ShouldBe(["hot-exhaust"]);
        rule.Limit.ShouldBe(new RuleLimit(60, null));
        rule.Source.ShouldBe(new RuleSource("shop", "none", ""));
        rule.Examples.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("60 mm", 60)]
    [InlineData("2-3/8 in", 60.325)]
    [InlineData("6 cm", 60)]
    [InlineData("-1 mm", -1)]
    [InlineData("0 mm", 0)]
    public void A_limit_is_read_through_the_tape_grammar(string typed, double millimetres) =>
        Libraries.Read(Libraries.Changed("60 mm", typed)).Library.ShouldNotBeNull().Rules[0].Limit.Number.ShouldBe(millimetres, 1e-12);

    [Theory]
    [InlineData("7 %", 7)]
    [InlineData("8.7 %", 8.7)]
    [InlineData("0.1%", 0.1)]
    public void A_percent_limit_is_the_number_that_was_typed(string typed, double percent) =>
        Libraries.Read(Libraries.Changed("7 %", typed)).Library.ShouldNotBeNull().Rules[1].Limit.Number.ShouldBe(percent);

    [Fact]
    public void Files_are_read_in_the_order_of_their_names_whatever_the_order_given()
    {
        RuleFile[] files = [.. BaseLibrary.Files];

        RuleLibrary turned = Libraries.Read([.. files.Reverse()]).Library.ShouldNotBeNull();

        turned.Rules.Select(r => r.Id).ShouldBe(Libraries.Base.Rules.Select(r => r.Id));
        turned.Hash.ShouldBe(Libraries.Base.Hash);
    }

    [Fact]
    public void The_hash_covers_every_byte_and_every_name()
    {
        string Hash(string name, string text) => Libraries.Read(Libraries.File(name, text)).Library.ShouldNotBeNull().Hash;

        string[] hashes = [Hash("a.yaml", Libraries.Shop), Hash("b.yaml", Libraries.Shop), Hash("a.yaml", Libraries.Shop + "# \n")];

        hashes.ShouldBeUnique();
    }

    [Fact]
    public void A_faulty_rule_is_named_and_the_others_load()
    {
        (RuleLibrary? library, DiagnosticBag diagnostics) = Libraries.Read(Libraries.Changed("60 mm", "60"));

        diagnostics.HasErrors.ShouldBeTrue();
        library.ShouldNotBeNull().Rules.Select(r => r.Id).ShouldBe(["hose-short"]);
        library.NotLoaded.ShouldBe(["line-near-pipe was not loaded: 1 fault at shop.yaml:9:24."]);
    }

    [Fact]
    public void A_new_quantity_can_be_limited_as_soon_as_the_catalogue_holds_it()
    {
        const string text = """
            format: 1
            library: the-shop
            version: 1.0.0
            rules:
              line-hangs-free:
                quantity: free-span
                part: { group: [ line ] }
                limit: { at-most: 610 mm }
                severity: caution
                source: { basis: shop }
                examples: [ { value: 610.1 mm, expect: fails }, { value: 610 mm, expect: conforms } ]
            """;
        QuantityCatalogue larger = new([.. QuantityCatalogue.Standard.All, new LargestTestQuantity()]);

        (RuleLibrary? library, DiagnosticBag diagnostics) = RuleLibraryReader.Read([Libraries.File("a.yaml", text)], larger);

        DiagnosticRenderer.Render(diagnostics).ShouldBe("");
        library.ShouldNotBeNull().Rules.Single().Limit.ShouldBe(new RuleLimit(null, 610));
    }

    [Fact]
    public void The_first_case_whose_facts_all_hold_sets_the_limit()
    {
        string text = Libraries.Changed(
            "{ at-least: 60 mm }",
            "{ at-least: 60 mm }\n    cases: [ { when: [ moving, shielded ], limit: { at-least: 40 mm } }, { when: [ shielded ], limit: { at-least: 30 mm } } ]");
        Rule rule = Libraries.Read(text).Library.ShouldNotBeNull().Rules[0];

        rule.LimitFor(ImmutableHashSet.Create("moving", "shielded")).Limit.Number.ShouldBe(40);
        rule.LimitFor(ImmutableHashSet.Create("shielded")).Limit.Number.ShouldBe(30);
        rule.LimitFor(ImmutableHashSet.Create("moving")).Limit.Number.ShouldBe(60);
    }

    [Fact]
    public void Any_damage_to_a_file_is_told_and_never_crashes()
    {
        byte[] whole = BaseLibrary.Files[1].Content.ToArray();
        var damage = Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Int[0, 40], Gen.OneOf("", ":", "{", "]", "\"", "\t", "\n", " - ", "#", "0", "é", "\0"));

        damage.Sample(
            (at, cut, put) =>
            {
                byte[] damaged = [.. whole[..at], .. Encoding.UTF8.GetBytes(put), .. whole[Math.Min(whole.Length, at + cut)..]];
                (RuleLibrary? library, DiagnosticBag diagnostics) = Libraries.Read(new RuleFile("brake-lines.yaml", damaged));
                _ = DiagnosticRenderer.Render(diagnostics);
                if (library is null) return diagnostics.HasErrors;
                return (library.NotLoaded.IsEmpty == !diagnostics.HasErrors) && library.Rules.All(RuleExamples.AllHold);
            },
            iter: 300);
    }
}
