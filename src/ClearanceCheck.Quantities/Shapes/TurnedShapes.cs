using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Geometry.Shapes;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Quantities.Shapes;

/// <summary>Tires, wheels and other solids of revolution.</summary>
internal static class TurnedShapes
{
    public static Revolved Turned(PartForm.Turned form, ReadOnlySpan<double> parameters)
    {
        Vector3d from = form.From.At(parameters), axis = form.To.At(parameters) - from;
        ImmutableArray<ProfilePoint> profile = Profile(form.Profile, parameters);
        // The profile is the outer face: a wall reaches from it towards the axis.
        return new Revolved(from, axis, form.Wall is { } wall ? [.. Shell(profile, wall.At(parameters), -1, alongAxis: false)] : Full(profile));
    }

    public static Revolved Tire(PartForm.Tire form, ReadOnlySpan<double> parameters)
    {
        (Vector3d hub, Vector3d outboard) = Axis(form.Seat, parameters);
        // The rim's middle plane lies inboard of the mounting face by the offset.
        Vector3d middle = hub - (outboard * form.Offset.At(parameters));
        return new Revolved(middle, outboard,
        [
            .. TireSection.Polygons(form.RadiusMm.At(parameters), form.WidthMm.At(parameters), form.RimRadiusMm)
                .Select(polygon => new Section([.. polygon.Select(c => new ProfilePoint(c.RadiusMm, c.AlongMm))], 0)),
        ]);
    }

    public static Revolved Wheel(PartForm.Wheel form, ReadOnlySpan<double> parameters)
    {
        (Vector3d hub, Vector3d outboard) = Axis(form.Seat, parameters);
        // Inner faces: the walls reach outward from them, the barrel's away from the axis and the disc's away from the vehicle.
        return new Revolved(hub, outboard,
        [
            .. Shell(Profile(form.Barrel, parameters), form.BarrelWall.At(parameters), 1, alongAxis: false),
            .. Shell(Profile(form.Disc, parameters), form.DiscWall.At(parameters), 1, alongAxis: true),
        ]);
    }

    /// <summary>The middle of the mounting face and the direction away from the vehicle.</summary>
    private static (Vector3d Hub, Vector3d Outboard) Axis(WheelSeat seat, ReadOnlySpan<double> parameters)
    {
        Vector3d hub = seat.Hub.At(parameters), square = Vector3d.UnitY * (seat.IsLeft ? 1 : -1);
        return (hub, seat.OtherHub is { } other ? (hub - other.At(parameters)).NormalizedOr(square) : square);
    }

    private static ImmutableArray<ProfilePoint> Profile(ImmutableArray<ProfileCorner> corners, ReadOnlySpan<double> parameters)
    {
        var profile = ImmutableArray.CreateBuilder<ProfilePoint>(corners.Length);
        foreach (ProfileCorner corner in corners) profile.Add(new ProfilePoint(Math.Max(0, corner.Radius.At(parameters)), corner.Along.At(parameters)));
        return profile.MoveToImmutable();
    }

    // From the profile to the axis, slice by slice.
    private static ImmutableArray<Section> Full(ImmutableArray<ProfilePoint> profile)
    {
        var sections = ImmutableArray.CreateBuilder<Section>();
        for (int i = 1; i < profile.Length; i++)
        {
            (ProfilePoint a, ProfilePoint b) = (profile[i - 1], profile[i]);
            if (a.Along == b.Along) sections.Add(new Section([a, b], 0));
            else sections.Add(new Section([a, b, new ProfilePoint(0, b.Along), new ProfilePoint(0, a.Along)], 0));
        }

        return sections.ToImmutable();
    }

    // A wall on one side of each stretch of the profile: away from the axis, or along it (+1), or the other way (-1).
    private static IEnumerable<Section> Shell(ImmutableArray<ProfilePoint> profile, double wallMm, int side, bool alongAxis)
    {
        for (int i = 1; i < profile.Length; i++)
        {
            (ProfilePoint a, ProfilePoint b) = (profile[i - 1], profile[i]);
            double along = b.Along - a.Along, up = b.Radius - a.Radius, length = Math.Sqrt((along * along) + (up * up));
            if (!(length > 0)) continue;
            double awayRadius = along / length, awayAlong = -up / length;
            (double leading, double other) = alongAxis ? (awayAlong, awayRadius) : (awayRadius, awayAlong);
            if (leading < 0 || (leading == 0 && other < 0)) (awayRadius, awayAlong) = (-awayRadius, -awayAlong);
            double shift = side * wallMm / 2;
            yield return new Section([Moved(a), Moved(b)], wallMm / 2);

            ProfilePoint Moved(ProfilePoint p) => new(Math.Max(0, p.Radius + (awayRadius * shift)), p.Along + (awayAlong * shift));
        }
    }
}
