namespace ClearanceCheck.Units;

/// <summary>Finds the word that somebody most likely meant.</summary>
public static class NearestWord
{
    /// <summary>Words longer than this are not compared: nobody mistypes a key of that length by a letter or two.</summary>
    private const int LongestCompared = 80;

    /// <summary>The nearest of the words by <see cref="Distance"/>, or null when none is near enough; ties go to the word that comes first in ordinal order.</summary>
    /// <remarks>Near enough is a third of the longer word's letters, at least one and at most three; case does not count. Common practice, no source.</remarks>
    public static string? Find(string typed, IEnumerable<string> words)
    {
        if (typed.Length is 0 or > LongestCompared) return null;
        string? best = null;
        var bestDistance = int.MaxValue;
        foreach (var word in words)
        {
            var distance = Distance(typed.ToLowerInvariant(), word.ToLowerInvariant());
            if (distance > Allowed(typed, word)) continue;
            if (distance > bestDistance) continue;
            if (distance == bestDistance && string.CompareOrdinal(word, best) >= 0) continue;
            (best, bestDistance) = (word, distance);
        }

        return best;
    }

    /// <summary>Letters to insert, drop, replace or swap with their neighbour to get from one word to the other (optimal string alignment).</summary>
    public static int Distance(string left, string right)
    {
        var before = new int[right.Length + 1];
        var last = new int[right.Length + 1];
        var current = new int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++) last[j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var change = left[i - 1] == right[j - 1] ? 0 : 1;
                var cost = Math.Min(Math.Min(current[j - 1], last[j]) + 1, last[j - 1] + change);
                if (IsSwap(left, right, i, j)) cost = Math.Min(cost, before[j - 2] + 1);
                current[j] = cost;
            }

            (before, last, current) = (last, current, before);
        }

        return last[right.Length];
    }

    private static bool IsSwap(string left, string right, int i, int j) =>
        i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1];

    private static int Allowed(string typed, string word) => Math.Clamp(Math.Max(typed.Length, word.Length) / 3, 1, 3);
}
