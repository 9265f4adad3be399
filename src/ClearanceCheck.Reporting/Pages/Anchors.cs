using System.Globalization;
using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>Element ids of the page: a finding's is its own id, so that links live from run to run.</summary>
/// <remarks>An id with a character that may not stand in an element id gets a dash in its place; one that is taken gets a number behind it.</remarks>
public sealed class Anchors
{
    private readonly Dictionary<string, string> byFinding = new(StringComparer.Ordinal);
    private readonly List<string> inOrder = [];

    internal Anchors(IEnumerable<Finding> findings, IEnumerable<string> reserved)
    {
        HashSet<string> taken = new(reserved, StringComparer.Ordinal);
        foreach (Finding finding in findings)
        {
            string anchor = FirstFree(Plain(finding.Id), taken);
            inOrder.Add(anchor);
            byFinding.TryAdd(finding.Id, anchor);
        }
    }

    /// <summary>The anchor of the finding at a place in the result's list.</summary>
    public string this[int index] => inOrder[index];

    /// <summary>The anchor of a finding's id; null when the result holds no such finding.</summary>
    public string? Of(string? findingId) => findingId is not null && byFinding.TryGetValue(findingId, out string? anchor) ? anchor : null;

    private static string Plain(string id)
    {
        string plain = string.Concat(id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-'));
        return plain.Length is > 0 and <= 300 ? plain : "finding-" + plain[..Math.Min(plain.Length, 300)];
    }

    private static string FirstFree(string wanted, HashSet<string> taken)
    {
        string name = wanted;
        for (int number = 2; !taken.Add(name); number++) name = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{number}");
        return name;
    }
}
