using CsCheck;

namespace ClearanceCheck.Units.Tests;

public sealed class NearestWordTests
{
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("length", "length", 0)]
    [InlineData("lenght", "length", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ca", "abc", 3)]
    [InlineData("", "abc", 3)]
    public void The_distance_counts_insertions_deletions_replacements_and_swaps(string left, string right, int distance) =>
        NearestWord.Distance(left, right).ShouldBe(distance);

    [Fact]
    public void The_distance_is_symmetric_and_zero_only_for_equal_words()
    {
        var word = Gen.Char['a', 'd'].Array[0, 7].Select(letters => new string(letters));

        Gen.Select(word, word).Sample(
            (left, right) =>
            {
                NearestWord.Distance(left, right).ShouldBe(NearestWord.Distance(right, left));
                (NearestWord.Distance(left, right) == 0).ShouldBe(left == right);
            },
            iter: 2000);
    }

    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("Length", "length")]
    [InlineData("hight", "height")]
    public void A_misspelt_word_finds_the_right_one(string typed, string expected) =>
        NearestWord.Find(typed, ["width", "length", "height"]).ShouldBe(expected);

    [Fact]
    public void A_word_far_from_all_finds_none() => NearestWord.Find("winch", ["width", "length", "height"]).ShouldBeNull();

    [Fact]
    public void A_tie_goes_to_the_first_in_ordinal_order_whatever_the_order_given()
    {
        NearestWord.Find("bat", ["hat", "cat"]).ShouldBe("cat");
        NearestWord.Find("bat", ["cat", "hat"]).ShouldBe("cat");
    }
}
