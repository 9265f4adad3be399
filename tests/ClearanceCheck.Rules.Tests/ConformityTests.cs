using System.Globalization;
using CsCheck;

namespace ClearanceCheck.Rules.Tests;

public sealed class ConformityTests
{
    // Source: decision-rule-vectors.csv of this project's reference tables, all 32 rows, its columns U and probability left out. They
    // follow the decision rule of ISO 14253-1:2017 and JCGM 106 as known second-hand (abstracts were read, the texts were not); that a
    // value at its limit counts as met is our own convention. Columns: side, estimate, standard uncertainty, limit, k, decision.
    private const string Vectors = """
        at-least,53,1,50,1.644854,conforms
        at-least,52,1,50,1.644854,conforms
        at-least,51.999999,1,50,1.644854,conforms
        at-least,51.6,1,50,1.644854,undecided
        at-least,50,1,50,1.644854,undecided
        at-least,48.4,1,50,1.644854,undecided
        at-least,48,1,50,1.644854,fails
        at-least,47.999999,1,50,1.644854,fails
        at-most,190,4,200,1.644854,conforms
        at-most,192,4,200,1.644854,conforms
        at-most,193,4,200,1.644854,conforms
        at-most,200,4,200,1.644854,undecided
        at-most,207,4,200,1.644854,fails
        at-most,209,4,200,1.644854,fails
        at-least,50,0,50,1.644854,conforms
        at-least,49.999,0,50,1.644854,fails
        at-least,53,1,50,2.000000,conforms
        at-least,52,1,50,2.000000,conforms
        at-least,51.999999,1,50,2.000000,undecided
        at-least,51.6,1,50,2.000000,undecided
        at-least,50,1,50,2.000000,undecided
        at-least,48.4,1,50,2.000000,undecided
        at-least,48,1,50,2.000000,undecided
        at-least,47.999999,1,50,2.000000,fails
        at-most,190,4,200,2.000000,conforms
        at-most,192,4,200,2.000000,conforms
        at-most,193,4,200,2.000000,undecided
        at-most,200,4,200,2.000000,undecided
        at-most,207,4,200,2.000000,undecided
        at-most,209,4,200,2.000000,fails
        at-least,50,0,50,2.000000,conforms
        at-least,49.999,0,50,2.000000,fails
        """;

    private static readonly Gen<double> Millimetres = Gen.Double[-200, 200];

    private static readonly Gen<double> GiveOrTake = Gen.Double[0, 50];

    public static TheoryData<string> Rows => [.. Vectors.ReplaceLineEndings("\n").Split('\n')];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Decision_rule_vectors_come_out_as_computed(string row)
    {
        string[] cells = row.Split(',');
        double[] numbers = [.. cells[1..5].Select(c => double.Parse(c, CultureInfo.InvariantCulture))];
        var limit = cells[0] == "at-least" ? new RuleLimit(numbers[2], null) : new RuleLimit(null, numbers[2]);

        var outcome = Conformity.Judge(limit, numbers[0], numbers[0], numbers[3] * numbers[1]);

        outcome.ToString().ToLowerInvariant().ShouldBe(cells[5]);
    }

    [Fact]
    public void All_vectors_are_here() => Rows.Count.ShouldBe(32);

    [Theory]
    [InlineData(double.NaN, 60, 1)]
    [InlineData(60, double.NaN, 1)]
    [InlineData(60, 60, double.NaN)]
    [InlineData(double.PositiveInfinity, 60, 1)]
    [InlineData(60, double.PositiveInfinity, 1)]
    [InlineData(60, 60, double.PositiveInfinity)]
    [InlineData(60, 60, -1)]
    public void Numbers_that_say_nothing_are_refused(double value, double bound, double giveOrTake) =>
        Should.Throw<ArgumentException>(() => Conformity.Judge(new RuleLimit(50, null), value, bound, giveOrTake));

    [Fact]
    public void Bound_and_give_or_take_are_added_not_combined_in_quadrature()
    {
        var limit = new RuleLimit(50, null);

        // In quadrature: 55 - sqrt(2^2 + 3.5^2) = 50.97 would conform. Added: 53 - 3.5 = 49.5 does not.
        Conformity.Judge(limit, 55, 53, 3.5).ShouldBe(ConformityOutcome.Undecided);
        Conformity.Judge(limit, 55, 53, 3).ShouldBe(ConformityOutcome.Conforms);
    }

    [Fact]
    public void A_bound_on_the_better_side_does_not_help() =>
        Conformity.Judge(new RuleLimit(50, null), 49, 60, 2).ShouldBe(ConformityOutcome.Undecided);

    [Fact]
    public void A_loose_bound_alone_never_fails() =>
        Conformity.Judge(new RuleLimit(50, null), 51, -1000, 0).ShouldBe(ConformityOutcome.Undecided);

    [Fact]
    public void More_value_never_makes_an_at_least_worse() =>
        Gen.Select(Millimetres, Millimetres, GiveOrTake, GiveOrTake, GiveOrTake).Sample((limit, value, slack, u, more) =>
            Conformity.Judge(new RuleLimit(limit, null), value + more, value - slack + more, u)
            <= Conformity.Judge(new RuleLimit(limit, null), value, value - slack, u));

    [Fact]
    public void More_give_or_take_only_moves_towards_undecided() =>
        Gen.Select(Millimetres, Millimetres, GiveOrTake, GiveOrTake, GiveOrTake).Sample((limit, value, slack, u, more) =>
        {
            ConformityOutcome wider = Conformity.Judge(new RuleLimit(limit, null), value, value - slack, u + more);
            return wider == ConformityOutcome.Undecided || wider == Conformity.Judge(new RuleLimit(limit, null), value, value - slack, u);
        });

    [Fact]
    public void A_looser_bound_never_makes_it_conform() =>
        Gen.Select(Millimetres, Millimetres, GiveOrTake, GiveOrTake, GiveOrTake).Sample((limit, value, slack, u, more) =>
            Conformity.Judge(new RuleLimit(limit, null), value, value - slack - more, u)
            >= Conformity.Judge(new RuleLimit(limit, null), value, value - slack, u));

    [Fact]
    public void At_most_is_at_least_in_the_mirror() =>
        Gen.Select(Millimetres, Millimetres, GiveOrTake, GiveOrTake).Sample((limit, value, slack, u) =>
            Conformity.Judge(new RuleLimit(null, limit), value, value + slack, u)
            == Conformity.Judge(new RuleLimit(-limit, null), -value, -(value + slack), u));

    [Fact]
    public void The_gravest_of_two_is_a_miss_before_a_straddle()
    {
        Conformity.Gravest(ConformityOutcome.Undecided, ConformityOutcome.Fails).ShouldBe(ConformityOutcome.Fails);
        Conformity.Gravest(ConformityOutcome.Undecided, ConformityOutcome.Conforms).ShouldBe(ConformityOutcome.Undecided);
    }
}
