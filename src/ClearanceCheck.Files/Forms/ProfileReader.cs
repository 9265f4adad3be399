using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>Reads a profile that is turned around an axis: <c>[[radius, along], ...]</c>.</summary>
internal static class ProfileReader
{
    /// <summary>The corners as typed: two or more, none repeated; null when one is faulty.</summary>
    public static IReadOnlyList<TypedCorner>? Read(Field field, VehicleDraft draft)
    {
        if (field.List(ReadCorner)?.Value is not { } corners) return null;
        if (corners.Count < 2)
        {
            FileMessages.OneCornerProfile(field);
            return null;
        }

        bool good = true;
        for (int i = 1; i < corners.Count; i++)
        {
            if (corners[i].RadiusMm != corners[i - 1].RadiusMm || corners[i].AlongMm != corners[i - 1].AlongMm) continue;
            FileMessages.CornerTwice(draft.Diagnostics, corners[i].Field.Node!.Span, i + 1);
            good = false;
        }

        return good ? corners : null;
    }

    /// <summary>Takes the corners into the parameter vector.</summary>
    public static ImmutableArray<ProfileCorner> Place(string path, IReadOnlyList<TypedCorner> corners, Within within, VehicleDraft draft) =>
    [
        .. corners.Select((c, i) => new ProfileCorner(
            draft.Length($"{path}/{i + 1}/radius", c.Radius, within), draft.Length($"{path}/{i + 1}/along", c.Along, within))),
    ];

    private static TypedCorner? ReadCorner(Field field)
    {
        if (field.Items(2) is not [var first, var second]) return null;
        Placed<LengthReading>? radius = first.Length(Sizes.Radius), along = second.Length(Sizes.Along);
        return radius is null || along is null ? null : new TypedCorner(field, radius, along);
    }
}
