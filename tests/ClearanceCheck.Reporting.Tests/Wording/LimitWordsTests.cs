using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Tests.Samples;
using ClearanceCheck.Reporting.Wording;

namespace ClearanceCheck.Reporting.Tests.Wording;

/// <summary>Limits with two sides, with a floor, or set by the part, in words and in <c>findings.json</c>.</summary>
public sealed class LimitWordsTests
{
    [Fact]
    public void A_limit_with_two_sides_names_both() =>
        Figures.Limit(new LimitCard(3, null, []) { Other = 8 }, Mm, 5).ShouldBe("at least 3 mm (1/8 in) and at most 8 mm (5/16 in)");

    [Fact]
    public void A_floor_says_that_it_holds_with_the_give_or_take() =>
        Figures.Limit(new LimitCard(50, null, []) { Floor = 35 }, Mm, 60).ShouldBe("at least 50 mm (1-15/16 in), and 35 mm (1-3/8 in) with the give or take");

    [Fact]
    public void A_limit_set_by_the_part_says_by_what() =>
        Figures.Limit(new LimitCard(50, null, []) { By = "outside diameter" }, Mm, 60).ShouldBe("at least 50 mm (1-15/16 in) for its outside diameter");

    [Fact]
    public void A_limit_set_by_what_is_missing_says_so() =>
        Figures.Limit(new LimitCard(null, null, []) { By = "free length" }, Mm, null).ShouldBe("set by the part's free length, which the file does not say");

    public static TheoryData<LimitCard> Cards => new()
    {
        new LimitCard(3, null, []) { Other = 8 },
        new LimitCard(null, 8, ["shielded"]) { Other = 3 },
        new LimitCard(50, null, []) { Floor = 35, By = "outside diameter" },
        new LimitCard(null, null, []) { By = "free length" },
    };

    [Theory]
    [MemberData(nameof(Cards))]
    public void Every_limit_comes_back_from_the_machine_text(LimitCard card)
    {
        bool isKnown = card.Least is not null || card.Most is not null;
        InspectionResult result = SampleResult.Whole();
        Finding changed = result.Findings[0] with { Limit = card, Verdict = isKnown ? result.Findings[0].Verdict : Verdict.NotEvaluated, Evidence = isKnown ? result.Findings[0].Evidence : null };

        string json = FindingsJson.Write(result with { Findings = [changed, .. result.Findings.Skip(1)] });

        LimitCard read = FindingsJson.Read(json).Findings[0].Limit;
        (read.AtLeast, read.AtMost, read.Other, read.Floor, read.By).ShouldBe((card.AtLeast, card.AtMost, card.Other, card.Floor, card.By));
        read.Because.ShouldBe(card.Because);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_accepted_finding_comes_back_from_the_machine_text_and_has_words_of_its_own(bool holds)
    {
        InspectionResult result = SampleResult.Whole();
        var card = new AcceptedCard("behind-shield", holds, "30 mm", "R. Amsel", "2031-10-01", "Checked hot", holds ? null : "it counted until 2031-10-01");
        Finding finding = result.Findings.First(f => f.Verdict == Verdict.Fails) with { Accepted = card };

        FindingsJson.Read(FindingsJson.Write(result with { Findings = [finding] })).Findings[0].Accepted.ShouldBe(card);

        ReportWords.Verdict(finding).ShouldBe(holds ? "fails, accepted" : "fails");
        HtmlReport.Write(result with { Findings = [finding] }).ShouldContain(holds
            ? "Accepted down to 30 mm by R. Amsel until 2031-10-01: Checked hot"
            : "Accepted by R. Amsel, which does not count: it counted until 2031-10-01.");
        SummaryText.Write(result with { Findings = [finding] }, colour: false).ShouldContain(holds ? "(1 accepted)" : "which does not count");
    }

    private static QuantityCard Mm => SampleFindings.Gap;
}
