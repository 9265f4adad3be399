using System.Collections.Immutable;
using static ClearanceCheck.Vehicles.PartFormKind;

namespace ClearanceCheck.Vehicles;

/// <summary>The catalogue of part kinds: a new kind is one line here.</summary>
public static class PartKinds
{
    /// <summary>The group that every kind belongs to.</summary>
    public const string AnyGroup = "any";

    public static ImmutableArray<PartKind> All { get; } =
    [
        new("brake-line", "a hard brake tube", ["line"], Chain),
        new("fuel-line", "a hard fuel tube", ["line"], Chain),
        new("wiring", "a wiring loom or lead", ["line"], Chain),
        new("exhaust-pipe", "an exhaust pipe", ["hot-exhaust"], Chain),
        new("muffler", "a muffler or catalyst", ["hot-exhaust"], Chain, Box),
        new("heat-shield", "a heat shield", ["shield"], Plate),
        new("axle-tube", "the tube or housing of a solid axle", ["suspension"], Chain),
        new("axle-housing", "the differential housing of an axle", ["suspension"], Turned, Box, Chain, Scanned),
        new("axle-bracket", "a bracket or mount on an axle", ["suspension"], Chain, Plate, Box),
        new("link", "a link, arm or track bar", ["suspension", "arm"], Link) { IsMirrorable = true },
        new("shock", "a shock absorber", ["suspension"], Shock) { IsMirrorable = true },
        new("coil-spring", "a coil spring", ["suspension"], Coil) { IsMirrorable = true },
        new("anti-roll-bar", "an anti-roll bar", ["suspension", "arm"], Chain),
        new("knuckle", "a steering knuckle", ["suspension"], Chain, Box, Scanned),
        new("driveshaft", "a driveshaft", ["driveline"], Shaft),
        new("steering-rod", "a drag link or tie rod", ["steering", "arm"], Link),
        new("rod-end", "the end of a steering rod or a ball joint", ["steering"], Chain, Turned),
        new("frame-tube", "a tube or rail of the frame, as a round bar", ["frame"], Chain),
        new("frame-rail", "a rail or crossmember of the frame", ["frame"], Box, Plate, Chain, Scanned),
        new("frame-bracket", "a bracket on the frame", ["frame"], Plate, Box, Chain),
        new("skid-plate", "a skid plate", ["frame"], Plate),
        new("gearbox", "a gearbox or transfer case", ["driveline"], Box, Turned, Scanned),
        new("fuel-tank", "a fuel tank", ["tank"], Box, Scanned),
        new("bodywork", "a fender, bumper, floor or seam of steel", ["bodywork"], Plate, Box, Scanned),
        new("liner", "a plastic wheel-arch liner", ["liner"], Plate, Box, Scanned),
        new("caliper", "a brake caliper", ["brake"], Box, Chain, Scanned),
        new("brake-rotor", "a brake rotor", ["brake"], Turned),
        new("brake-drum", "a brake drum", ["brake"], Turned),
        new("flange", "a hub or shaft flange", ["driveline"], Turned),
        new("brake-hose", "a flexible brake hose", ["hose"], Hose),
        new("wheel-speed-lead", "a lead to a wheel-speed sensor", ["hose"], Hose),
        new("breather-hose", "the breather hose of an axle", ["hose"], Hose),
        new("parking-brake-cable", "a cable of the parking brake", ["hose"], Hose),
        new("hose-end", "the hard end or banjo fitting of a hose", ["hose-end"], Chain),
        new("bump-stop", "a bump stop", ["stop"], BumpStop) { IsMirrorable = true },
        new("limit-strap", "a strap that limits droop", ["stop"], LimitStrap) { IsMirrorable = true },
        new("steering-stop", "a bolt and its pad that end the steering", ["stop"], SteeringStop),
        new("tire", "a tire", ["wheel"], FromAxle),
        new("wheel", "a wheel without its tire", ["wheel"], FromAxle),
        new("leaf-spring", "a leaf spring", ["suspension"], FromAxle),
        new("clutch-line", "a hydraulic tube of the clutch", ["line"], Chain),
        new("cooler-line", "a tube of the oil cooler of gearbox or engine", ["line"], Chain),
        new("vapour-line", "a tube for fuel vapour", ["line"], Chain),
        new("vacuum-line", "a vacuum tube", ["line"], Chain),
        new("power-steering-hose", "a hose of the power steering, clipped along its way", ["line"], Chain),
        new("refrigerant-hose", "a hose of the air conditioning, clipped along its way", ["line"], Chain),
        new("anti-roll-bar-link", "the link between an anti-roll bar and axle or frame", ["suspension", "arm"], Link),
        new("steering-shaft", "the shaft between steering wheel and steering box", ["steering"], Chain),
        new("boot", "a rubber boot of a joint", ["boot"], Turned, Chain),
        new("engine", "the engine with its pan", ["engine"], Box, Turned, Scanned),
        new("fan", "a radiator fan", ["fan"], Turned),
        new("radiator-shroud", "the shroud around a fan, or the radiator behind it", ["radiator"], Plate, Box, Scanned),
        new("lever", "a gear or transfer lever", ["lever"], Chain),
        new("fuel-filler", "the filler neck or hose of a tank", ["tank"], Chain),
    ];

    /// <summary>All groups that a kind belongs to, in order of first use.</summary>
    public static ImmutableArray<string> Groups { get; } = [.. All.SelectMany(k => k.Groups).Distinct(), AnyGroup];

    public static PartKind? Find(string id) => All.FirstOrDefault(k => k.Id == id);
}
