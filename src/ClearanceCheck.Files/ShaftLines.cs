using ClearanceCheck.Documents;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Checks how driveshafts of several pieces follow each other, and lists what is taken for granted about their joints.</summary>
internal static class ShaftLines
{
    // A joint's middle lies this far behind its bearing at most. Common practice, no source.
    private const double MostApartMm = 60;

    public static void Check(VehicleDraft draft)
    {
        var followed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((Part part, PartForm.Shaft shaft) in Shafts(draft))
            if (shaft.After is { } before) CheckAfter(part, shaft, before, followed, draft);
        foreach ((Part part, PartForm.Shaft shaft) in Shafts(draft)) Assume(part, shaft, Next(part, draft), draft);
    }

    private static IEnumerable<(Part Part, PartForm.Shaft Shaft)> Shafts(VehicleDraft draft) =>
        draft.Parts.Where(p => p.Form is PartForm.Shaft).Select(p => (p, (PartForm.Shaft)p.Form));

    private static PartForm.Shaft? Next(Part part, VehicleDraft draft) => Shafts(draft).Select(s => s.Shaft).FirstOrDefault(s => s.After == part.Id);

    private static void CheckAfter(Part part, PartForm.Shaft shaft, string before, Dictionary<string, string> followed, VehicleDraft draft)
    {
        SourceSpan at = draft.Places[$"parts/{part.Id}/after"];
        Part? previous = draft.Parts.Find(p => p.Id == before);
        // A faulty part has been reported: that nothing is known of it is not another fault.
        if (previous is null && before != part.Id && draft.Places.ContainsKey($"parts/{before}")) return;
        if (previous?.Form is not PartForm.Shaft piece || before == part.Id)
            FileMessages.AfterNoShaft(draft.Diagnostics, at, before, Shafts(draft).Select(s => s.Part.Id).Where(id => id != part.Id));
        else if (!followed.TryAdd(before, part.Id))
            FileMessages.FollowedTwice(draft.Diagnostics, at, before, followed[before]);
        else if (piece.Ends.FirstOrDefault(e => draft.AxleOf(e.Body) is not null) is { } moving)
            FileMessages.PieceMoves(draft.Diagnostics, draft.Places[$"parts/{before}"], before, part.Id, moving.Body);
        else if ((draft.At(piece.Second.At) - draft.At(shaft.First.At)).Length is > MostApartMm and var apart)
            FileMessages.DoesNotBeginThere(draft.Diagnostics, at, before, apart, MostApartMm, draft.Places[$"parts/{before}/second"]);
        else if (BeginsCircle(part, draft))
            FileMessages.ShaftsInACircle(draft.Diagnostics, at);
        else
            CheckBearing(part, shaft, before, piece, draft);
    }

    // What is bolted to the joint behind a centre bearing is the piece before it, and that piece has no other joint there.
    private static void CheckBearing(Part part, PartForm.Shaft shaft, string before, PartForm.Shaft piece, VehicleDraft draft)
    {
        if (shaft.FirstEnd.Ahead is { } first) FileMessages.AheadBehindBearing(draft.Diagnostics, draft.Places[draft.PathOf(first)], before);
        if (piece.SecondEnd.Ahead is { } second) FileMessages.JointAtBearing(draft.Diagnostics, draft.Places[draft.PathOf(second)], "ahead", part.Id);
        if (draft.Places.TryGetValue($"parts/{before}/joints/second", out SourceSpan kind)) FileMessages.JointAtBearing(draft.Diagnostics, kind, "joints: second", part.Id);
    }

    // Each circle is told once, at the piece of it that comes first in the file.
    private static bool BeginsCircle(Part part, VehicleDraft draft)
    {
        var seen = new List<Part>();
        for (Part? at = part; at?.Form is PartForm.Shaft { After: var before } && !seen.Contains(at); at = draft.Parts.Find(p => p.Id == before)) seen.Add(at);
        return ((PartForm.Shaft)seen[^1].Form).After == part.Id && seen.TrueForAll(p => draft.Parts.IndexOf(p) >= draft.Parts.IndexOf(part));
    }

    private static void Assume(Part part, PartForm.Shaft shaft, PartForm.Shaft? next, VehicleDraft draft)
    {
        bool first = draft.Places.ContainsKey($"parts/{part.Id}/joints/first"), second = next is not null || draft.Places.ContainsKey($"parts/{part.Id}/joints/second");
        if (!first || !second)
            draft.Assume($"parts/{part.Id}/joints", $"Kind of the joint{(first || second ? "" : "s")} at its {(first ? "second end" : second ? "first end" : "ends")} not typed: taken as {(first || second ? "a single cardan joint" : "single cardan joints")}.");
        bool areSingle = shaft.FirstEnd.Joint == ShaftJointKind.Single && (next?.FirstEnd.Joint ?? shaft.SecondEnd.Joint) == ShaftJointKind.Single;
        if (areSingle && !draft.Places.ContainsKey($"parts/{part.Id}/phase"))
            draft.Assume($"parts/{part.Id}/phase", "How its yokes stand to each other not typed: taken as in phase, the forks at both ends in one plane.");
    }
}
