using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>Which of the forms that a kind allows a part has: the keys that stand there say it.</summary>
internal static class FormChoice
{
    /// <summary>The forms of a part on one body, the keys that mark each, those that go with them, and how they are offered.</summary>
    private static readonly ImmutableArray<(PartFormKind Form, ImmutableArray<string> Keys, ImmutableArray<string> Others, string Offer)> Marks =
    [
        (PartFormKind.Chain, ["path", "path-from"], ["outside-diameter", "clips"], "`path` or `path-from` with `outside-diameter` for a line, pipe or bar"),
        (PartFormKind.Plate, ["outline"], ["thickness"], "`outline` with `thickness` for a plate"),
        (PartFormKind.Box, ["corners"], [], "`corners` for a box"),
        (PartFormKind.Turned, ["axis", "profile"], ["wall"], "`axis` with `profile` for something round about an axis"),
        (PartFormKind.Scanned, ["scan"], [], "`scan` for a scanned surface"),
    ];

    private static readonly ImmutableArray<string> Own = ["kind", "name", "body", "in", "within", "touches"];

    /// <summary>The form, or null when that has been said to be unclear.</summary>
    public static PartFormKind? Of(PartSource part)
    {
        ImmutableArray<PartFormKind> allowed = part.Kind.Forms;
        if (!Marks.Any(m => allowed.Contains(m.Form))) return allowed[0];
        ImmutableArray<(PartFormKind Form, string Key)> typed =
            [.. Marks.SelectMany(m => m.Keys.Where(k => part.Reader.Node.Find(k) is not null).Take(1).Select(k => (m.Form, k)))];
        if (typed.IsEmpty && IsReadTo(part) && !SaysMore(part)) return PartFormKind.Unshaped;
        ImmutableArray<(PartFormKind Form, string Key)> fitting = [.. typed.Where(t => allowed.Contains(t.Form))];
        if (fitting.Length == 1) return fitting[0].Form;
        if (typed.IsEmpty && allowed.Length == 1) return allowed[0];
        string offer = string.Join("; ", Marks.Where(m => allowed.Contains(m.Form)).Select(m => m.Offer));
        if (fitting.Length > 1) FileMessages.TwoForms(part, [.. fitting.Select(f => f.Key)], offer);
        else if (!typed.IsEmpty) FileMessages.OtherForm(part, typed[0].Key, offer);
        else if (IsMisspelt(part)) return null;
        else FileMessages.NoForm(part, offer);
        part.Reader.AllowAll();
        return null;
    }

    // A gap that was read to a part, or to the body it is on, says something of it without any shape.
    private static bool IsReadTo(PartSource part) =>
        part.Draft.NamedByGaps.Contains(part.Id) || (part.Reader.Node.Find("body")?.Value is ScalarNode body && part.Draft.NamedByGaps.Contains(body.Text));

    // Whoever typed something of a shape, or meant to, gets told what is missing of it.
    private static bool SaysMore(PartSource part)
    {
        string[] keys = [.. Marks.Where(m => part.Kind.Forms.Contains(m.Form)).SelectMany(m => m.Keys.Concat(m.Others))];
        return part.Reader.Node.Entries.Any(e => keys.Contains(e.Key.Text) || (!Own.Contains(e.Key.Text) && NearestWord.Find(e.Key.Text, keys) is not null));
    }

    // The reader of keys names a misspelt key with its right spelling; a second message would be the same fault twice.
    private static bool IsMisspelt(PartSource part)
    {
        string[] keys = [.. Marks.Where(m => part.Kind.Forms.Contains(m.Form)).SelectMany(m => m.Keys)];
        if (!part.Reader.Node.Entries.Any(e => NearestWord.Find(e.Key.Text, keys) is not null)) return false;
        part.Reader.Allow([.. keys, .. Marks.Where(m => part.Kind.Forms.Contains(m.Form)).SelectMany(m => m.Others)]);
        return true;
    }
}
