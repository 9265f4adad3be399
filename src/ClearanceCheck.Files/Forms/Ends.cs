using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.States;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>The two places between which a part lies.</summary>
internal static class Ends
{
    /// <summary>Ends that are nearer to each other are one point typed twice, mm.</summary>
    public const double LeastApartMm = 1;

    /// <summary>Reads one end: <c>{ body, at }</c>, with <c>in</c> where it was measured in another state than the part.</summary>
    public static Place? Read(PartSource part, string key, string what, Within within) =>
        part.Reader.Required(key, what).Mapping(r => Read(part, key, r, within).Place);

    /// <summary>Reads an end that may say more than that, with the state typed at it.</summary>
    public static (Place? Place, Placed<string>? State) Read(PartSource part, string key, MappingReader reader, Within within)
    {
        Placed<string>? body = BodyWord.Read(reader.Required("body", "the body it is on"), part.Draft);
        Placed<LengthTriple>? at = reader.Required("at", "the place").Triple();
        Placed<string>? state = StateWord.Read(reader.Optional("in"), part.Draft);
        return (body is null || at is null ? null : new Place(body.Value, part.Point(key, at, within, body.Value, state)), state);
    }

    /// <summary>True when the ends can be those of one part; said when not.</summary>
    /// <param name="part">The part.</param>
    /// <param name="first">Its first end.</param>
    /// <param name="second">Its second end.</param>
    /// <param name="what">The part in a word: "the hose".</param>
    public static bool AreSound(PartSource part, Place first, Place second, string what)
    {
        if (ApartMm(part, first, second) < LeastApartMm) FileMessages.SamePlaceTwice(part.Reader, what);
        else if (AxleOf(first) is { } a && AxleOf(second) is { } b && a != b) FileMessages.TwoAxles(part, what, first.Body, second.Body);
        else return true;
        return false;
    }

    /// <summary>True when the ends are on bodies that move against each other; said when not.</summary>
    public static bool Move(PartSource part, Place first, Place second, string what)
    {
        if (first.Body != second.Body && (AxleOf(first) ?? AxleOf(second)) is not null) return true;
        FileMessages.EndsDoNotMove(part, what, first.Body, second.Body);
        return false;
    }

    /// <summary>How far the ends lie apart as measured, mm.</summary>
    public static double ApartMm(PartSource part, Place first, Place second) => (part.Draft.At(second.At) - part.Draft.At(first.At)).Length;

    private static string? AxleOf(Place place) => place.Body.Split('/') is [var axle, _] ? axle : null;
}
