using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Mirroring;

/// <summary>Makes the mirror image of a part that was measured on one side.</summary>
internal static class PartMirror
{
    /// <summary>The mirror of a part that has a side and may have one; null otherwise, and said where it may not.</summary>
    public static Mirror? Read(MappingReader reader, PartKind? kind)
    {
        Mirror? mirror = Mirror.Read(reader);
        if (mirror is null || kind is null || kind.IsMirrorable) return mirror;
        FileMessages.NeverMirrored(mirror.Place, kind);
        return null;
    }

    /// <summary>The image; null when it would ride on a body that is not there, which is said.</summary>
    /// <param name="mirror">The mirror.</param>
    /// <param name="id">The id that stands for both.</param>
    /// <param name="name">The typed name of both, or null.</param>
    /// <param name="source">The part of the side that was measured.</param>
    /// <param name="draft">The model so far.</param>
    public static Part? Of(Mirror mirror, string id, string? name, Part source, VehicleDraft draft)
    {
        string own = IdOf(id, mirror.Other);
        bool sound = true;
        foreach (Axle axle in source.Form.Ends.Select(e => draft.AxleOf(e.Body)).OfType<Axle>().DistinctBy(a => a.Name)) AxleTilt.Check(mirror, axle.Name, axle.MeasuredIn, draft);
        PartForm form = source.Form.WithEnds(end =>
        {
            string body = ImageOf(end.Body);
            if (!draft.Bodies.Contains(body))
            {
                FileMessages.NoSuchImage(mirror.Place, end.Body, body);
                sound = false;
            }

            string key = draft.PathOf(end.At)[$"parts/{source.Id}/".Length..];
            return new Place(body, mirror.Of(end.At, $"parts/{own}/{key}", draft));
        });
        if (!sound) return null;
        draft.Assume($"parts/{own}", mirror.Sentence("It is"));
        return source with { Id = own, Name = NameOf(own, name, mirror.Other), Body = form.Ends[0].Body, Form = form };
    }

    public static string IdOf(string id, string side) => $"{id}-{side}";

    /// <summary>The name of the part on one side.</summary>
    public static string NameOf(string id, string? name, string side) => name is null ? id : $"{name}, {side}";

    // A body of one side has its image on the other; all others are their own.
    private static string ImageOf(string body) =>
        body.Split('/') is [var axle, var own] && Mirror.Swapped(own) is { } image ? $"{axle}/{image}" : body;
}
