using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Wheels;

/// <summary>Makes the tires and wheels of an axle: two of each, alike.</summary>
internal static class AxleWheelParts
{
    private static readonly ImmutableArray<string> Sides = ["left", "right"];

    /// <summary>Takes the ids of the parts that will be made, so that no other part takes them, even where the axle has a fault.</summary>
    public static void Announce(Field wheel, string axle, VehicleDraft draft)
    {
        if (wheel.Node is not MappingNode node) return;
        foreach (string side in Sides)
        {
            Announce(TireId(axle, side), axle, node, draft);
            if (node.Find("barrel") is not null) Announce(WheelId(axle, side), axle, node, draft);
        }
    }

    public static void Make(WheelDescription wheel, string axle, AxleGeometry geometry, double? axleWithin, VehicleDraft draft)
    {
        string path = $"axles/{axle}/wheel";
        double? within = wheel.Within ?? axleWithin;
        MeasuredLength offset = draft.Length($"{path}/offset", wheel.Offset, Within.For(wheel.Within, null, Defaults.SizeMm, "a size from a caliper or a maker"));
        TireSolid tire = TireFigures.Place(path, wheel.Tire, within, draft);
        Func<WheelSeat, PartForm.Wheel>? rim = wheel.Rim is { } faces ? Faces(path, faces, within, draft) : null;
        draft.Assume(path, "Tire and wheel are taken as alike on both sides, round and running true but for the runout listed.");
        if (!geometry.IsSolid) draft.Assume($"{path}/axis", "Each wheel's axis is taken as square to the vehicle's centre plane: camber and toe were not measured.");
        else if (geometry.Left.Body != geometry.Right.Body) draft.Assume($"{path}/axis", "Each wheel's axis is taken to go through both hubs with the wheels straight ahead: camber and toe were not measured.");
        foreach (bool left in new[] { true, false })
        {
            ((string body, MeasuredPoint hub), MeasuredPoint other) = left ? (geometry.Left, geometry.Right.Hub) : (geometry.Right, geometry.Left.Hub);
            var seat = new WheelSeat(hub, geometry.IsSolid ? other : null, left);
            string side = Sides[left ? 0 : 1], tireId = TireId(axle, side), wheelId = WheelId(axle, side);
            draft.Parts.Add(Part(tireId, "tire", axle, $"{side}-tire", body, new PartForm.Tire(seat, tire.Radius, tire.Width, offset, tire.RimRadiusMm), rim is null ? [] : [wheelId]));
            if (rim is not null) draft.Parts.Add(Part(wheelId, "wheel", axle, $"{side}-wheel", body, rim(seat), [tireId]));
        }
    }

    private static void Announce(string id, string axle, MappingNode node, VehicleDraft draft)
    {
        draft.FromAxles[id] = axle;
        draft.Remember($"parts/{id}", node.Heading);
    }

    // The same faces on each side's seat.
    private static Func<WheelSeat, PartForm.Wheel> Faces(string path, RimFaces faces, double? within, VehicleDraft draft)
    {
        Within surface = Within.For(within, draft.FileWithin, Defaults.SurfaceMm, "a face of a wheel");
        ImmutableArray<ProfileCorner> barrel = ProfileReader.Place($"{path}/barrel", faces.Barrel, surface, draft);
        MeasuredLength barrelWall = Wall($"{path}/barrel-wall", faces.BarrelWall, Defaults.BarrelWallMm, draft);
        ImmutableArray<ProfileCorner> disc = ProfileReader.Place($"{path}/disc", faces.Disc, surface, draft);
        if (disc.IsEmpty) draft.Assume($"{path}/disc", "The wheel's disc was not measured: what lies inside the wheel is not compared with it.");
        MeasuredLength discWall = disc.IsEmpty ? barrelWall : Wall($"{path}/disc-wall", faces.DiscWall, Defaults.DiscWallMm, draft);
        return seat => new PartForm.Wheel(seat, barrel, barrelWall, disc, discWall);
    }

    private static MeasuredLength Wall(string path, Placed<LengthReading>? typed, double assumedMm, VehicleDraft draft)
    {
        if (typed is not null) return draft.Length(path, typed, Sizes.Default, widen: false);
        draft.Assume(path, $"Thickness not typed: taken as {NumberFormat.UpTo(assumedMm, 1)} mm, {NumberFormat.UpTo(Defaults.WallWithinMm, 1)} mm each way (common practice, no source).");
        return draft.Computed(path, assumedMm, Defaults.WallWithinMm, true);
    }

    private static Part Part(string id, string kind, string axle, string words, string body, PartForm form, ImmutableArray<string> touches) =>
        new() { Id = id, Name = AxleWords.Name(axle, words), Kind = PartKinds.Find(kind)!, Body = body, Form = form, Touches = touches };

    private static string TireId(string axle, string side) => $"{axle}-{side}-tire";

    private static string WheelId(string axle, string side) => $"{axle}-{side}-wheel";
}
