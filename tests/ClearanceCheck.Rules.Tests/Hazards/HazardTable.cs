using System.Collections.Immutable;

namespace ClearanceCheck.Rules.Tests.Hazards;

/// <summary>The hazards after a lift, a row for each check, in the order in which a technician goes through them.</summary>
internal static class HazardTable
{
    public static ImmutableArray<HazardRow> Rows { get; } =
    [
        new("brake hoses", "never taut with one wheel hanging, lock to lock")
        {
            ServedBy = ["brake-hose-pulled-tight", "brake-hose-short-of-slack", "brake-hose"],
            Waits = "slack in millimetres: a hose is judged by percent alone; 10 mm to spare needs a quantity of its own",
        },
        new("brake hoses", "not so long that it reaches tire, barrel, spring or ground")
        {
            ServedBy = ["rub-marks-after-drive"],
            Waits = "hose shapes: a hose has ends and a length and no path yet",
        },
        new("brake hoses", "no pull on the ferrule, no tight bend, no twist")
        {
            ServedBy = ["hose-clips-present"],
            Waits = "bend-radius, twist: both need the shape of the hose",
        },
        new("brake hoses", "held by its bracket and clip") { ServedBy = ["hose-clips-present"] },
        new("brake hoses", "clear of tire, barrel, spring, shock, arm, exhaust")
        {
            ServedBy = ["tire-strikes-hose-end", "wheel-strikes-brake-or-steering", "wheel-near-hose-or-rod-end", "hose-end-struck-by-moving-part", "hose-end-touches-exhaust", "hose-end-near-exhaust"],
            Waits = "hose shapes: only the hard ends of a hose have a place",
        },
        new("brake hoses", "wheel-speed lead, breather, parking-brake cable the same")
        {
            ServedBy = ["wheel-speed-lead-pulled-tight", "breather-hose-pulled-tight", "parking-brake-cable-pulled-tight", "wheel-speed-leads", "breather", "parking-brake-cables", "wheel-speed-leads-reach", "fluids-and-breathers", "parking-brake-holds"],
            Waits = "hose shapes: what they reach on their way is not known",
        },
        new("brake hydraulics", "hold and leak test, bled, wheels turn free") { ServedBy = ["brake-pedal-hold", "brakes-bled", "hanging-wheels-turn-free"] },
        new("brake hydraulics", "load-sensing valve set at ride height, its link not over centre")
        {
            ServedBy = ["load-sensing-valve-set"],
            Waits = "over-centre: the link and lever of the valve are not in the file",
        },
        new("brake and fuel tubes", "brake tube clear of exhaust")
        {
            ServedBy = ["brake-line-near-exhaust", "brake-line-touches-exhaust", "brake-line"],
            Waits = "temperature: how hot it gets is not computed",
        },
        new("brake and fuel tubes", "brake tube clear of axle, driveshaft, U-bolts and all that moves") { ServedBy = ["brake-line-near-moving-part", "brake-line-struck-by-moving-part"] },
        new("brake and fuel tubes", "fuel tube the same") { ServedBy = ["fuel-line-struck-by-moving-part", "fuel-line-near-moving-part", "fuel-line-touches-exhaust", "fuel-line-heated-by-exhaust", "fuel-line-near-wiring", "fuel-line", "fuel-lines-tight"] },
        new("brake and fuel tubes", "no unsupported span") { ServedBy = ["brake-line-unsupported", "tube-unsupported"] },
        new("brake and fuel tubes", "no chafing at a bracket that dropped") { ServedBy = ["brake-line-chafes", "lines-do-not-chafe"] },
        new("brake and fuel tubes", "gearbox-cooler, fuel-vapour, clutch and vacuum lines the same") { ServedBy = ["service-line-struck-by-moving-part", "service-line-near-exhaust"] },
        new("exhaust", "clear of tank and filler")
        {
            ServedBy = ["fuel-tank-touches-exhaust", "fuel-tank-near-exhaust", "exhaust"],
            Waits = "temperature: a tank is judged by distance alone",
        },
        new("exhaust", "clear of axle and arms at bump, with its swing and hot growth")
        {
            ServedBy = ["exhaust-struck-by-suspension", "exhaust-near-suspension"],
            Waits = "free joints of the exhaust: its body is fixed to the chassis, so the swing stands in the limit",
        },
        new("exhaust", "clear of the steering") { ServedBy = ["exhaust-jams-steering", "exhaust-near-steering"] },
        new("exhaust", "clear of shock, boots, hoses and liner")
        {
            ServedBy = ["shock-near-exhaust", "boot-near-exhaust", "exhaust-near-liner", "power-steering-hose-near-exhaust", "refrigerant-hose-near-exhaust"],
            Waits = "temperature: heat is judged by distance alone; labels after the first drive confirm it",
        },
        new("exhaust", "clear of the floor and the frame") { ServedBy = ["exhaust-near-floor", "exhaust-rattles-on-frame", "temperature-labels-read"] },
        new("exhaust", "joints tight, outlet beyond the cabin") { ServedBy = ["exhaust-joints-tight", "exhaust-outlet-beyond-cabin"] },
        new("tires", "clear of frame, arms, spring, anti-roll bar") { ServedBy = ["tire-strikes-frame-or-suspension", "tire-close-to-frame-or-suspension", "tires"] },
        new("tires", "room at ride height over full steer") { ServedBy = ["tire-short-of-room-at-ride-height"] },
        new("tires", "bodywork, and liner rub apart from steel") { ServedBy = ["tire-rubs-bodywork", "tire-rubs-liner"] },
        new("tires", "clear of exhaust")
        {
            ServedBy = ["tire-touches-exhaust", "tire-near-exhaust"],
            Waits = "temperature: a tire is judged by distance alone",
        },
        new("tires", "chain allowance")
        {
            ServedBy = ["tire-strikes-frame-or-suspension", "tire-rubs-bodywork"],
            Also = "chains that the file declares are swept with the tire",
        },
        new("tires", "barrel to caliper, rod end, arm") { ServedBy = ["wheel-near-caliper", "wheel-strikes-arm-or-frame", "wheel-near-steering-rod-or-arm"] },
        new("wheels", "thread engagement, nut seat form, hub bore, spacers") { ServedBy = ["wheel-nuts-tightened", "wheel-seated-on-hub", "wheel-spacers-held"] },
        new("wheels", "load rating, size for the rim, gearing and speedometer") { ServedBy = ["load-rating-of-wheels-and-tires", "speedometer-and-gearing", "speedometer-reads-wrong", "geared-far-from-original"] },
        new("wheels", "outside the bodywork (local law)") { ServedBy = ["local-law-looked-up"] },
        new("steering", "rods to frame, pan, cover, track bar, spring") { ServedBy = ["steering-rod-strikes-part", "steering-rod-near-part", "steering-rods"] },
        new("steering", "no over-centre at pitman arm, drag link, steering arm") { ServedBy = ["steering-goes-over-centre", "steering-close-to-over-centre"] },
        new("steering", "stops touch before the tire and before the box does")
        {
            ServedBy = ["steering-stops", "steering-free-lock-to-lock"],
            Waits = "order of stops: a stop that another one passes is listed and no rule asks",
        },
        new("steering", "rod-end angle")
        {
            ServedBy = ["rod-end-nuts-pinned", "rod-end-bent-too-far"],
        },
        new("steering", "damper length")
        {
            ServedBy = ["shock-bottoms"],
            Also = "a damper is a part of kind shock",
        },
        new("steering", "shaft engagement and angle, shaft clear of what moves")
        {
            ServedBy = ["steering-shaft-near-part", "steering-shaft-engaged"],
            Waits = "engagement: the steering shaft is a bar without splines here",
        },
        new("steering", "bump-steer, toe-change") { ServedBy = ["wheels-steer-over-bumps", "toe-changes-over-travel"] },
        new("steering", "toe as measured")
        {
            ServedBy = ["alignment-measured", "toe-out-of-range"],
        },
        new("steering", "drag link and track bar alike in angle and length")
        {
            ServedBy = ["wheels-steer-over-bumps"],
            Also = "what it causes is judged: bump-steer",
        },
        new("steering", "pitman nut, rod-end nuts, sleeves, bolts, brackets, welds") { ServedBy = ["pitman-nut-tightened", "rod-end-nuts-pinned", "adjuster-sleeves-clamped", "track-bar-bolts-tightened", "arm-bolts-tightened", "drop-brackets-tight", "welds-sound"] },
        new("driveline", "joint limit at one-side droop, turned by hand") { ServedBy = ["driveshaft-joint-binds", "driveshaft-joint-bent-far", "driveshaft-turns-free", "driveshaft"] },
        new("driveline", "running angles")
        {
            ServedBy = ["driveshaft-bent-much-at-ride-height", "driveshaft-bent-at-ride-height", "driveshaft-turns-unevenly"],
            Waits = "shaft speed, type and use: the file does not say them, so one angle stands for all; too straight a joint needs the other side of joint-angle",
        },
        new("driveline", "spline engagement at droop, reserve at bump") { ServedBy = ["driveshaft-comes-apart", "driveshaft-short-of-spline", "driveshaft-bottoms-on-its-slip"] },
        new("driveline", "centre bearing, boot angle")
        {
            ServedBy = ["driveshaft-turns-free"],
            Waits = "joint-angle: half axles with plunging joints have no plunge and no boot in the file",
        },
        new("driveline", "shaft to crossmember, exhaust, tank, arms") { ServedBy = ["driveshaft-strikes-part", "driveshaft-near-part", "driveshaft-near-suspension-or-steering"] },
        new("springs and shocks", "no shock bottoms before the bump stop") { ServedBy = ["shock-bottoms", "shocks", "bump-stops"] },
        new("springs and shocks", "no shock is the droop stop by surprise")
        {
            ServedBy = ["shock-full-length-before-strap"],
            Also = "the travel table names the stop that ends each droop",
        },
        new("springs and shocks", "shock clear of frame and arms") { ServedBy = ["shock-strikes-part"] },
        new("springs and shocks", "eye and stem angle")
        {
            ServedBy = ["springs-seated"],
            Waits = "joint-angle: an eye has no direction in the file",
        },
        new("springs and shocks", "coil seated at droop") { ServedBy = ["coil-spring-comes-loose", "springs-seated"] },
        new("springs and shocks", "no coil bind")
        {
            ServedBy = ["springs-seated"],
            Waits = "reserve: coil bind is a stop of the motion, and no rule asks whether it comes first",
        },
        new("springs and shocks", "metal never meets before the stop") { ServedBy = ["axle-strikes-frame", "axle-strikes-engine"] },
        new("springs and shocks", "two thirds of the original travel left each way") { ServedBy = ["travel-cut-short"] },
        new("links and axle", "arms, track bar and anti-roll bar clear of frame, pan, cover") { ServedBy = ["arm-strikes-part"] },
        new("links and axle", "fuel tank clear of the axle") { ServedBy = ["fuel-tank-struck-by-moving-part"] },
        new("links and axle", "ball-joint and bushing angle")
        {
            ServedBy = ["arm-bolts-tightened", "arm-joint-bent-too-far"],
            Waits = "bushing-deflection: the twist of a bushing is no quantity yet",
        },
        new("links and axle", "anti-roll bar link not over centre") { ServedBy = ["anti-roll-bar-goes-over-centre"] },
        new("links and axle", "shackle angle")
        {
            ServedBy = ["u-bolts-torqued"],
            Waits = "shackle angle: no quantity yet",
        },
        new("links and axle", "blocks, U-bolts") { ServedBy = ["lift-blocks-located", "u-bolts-torqued"] },
        new("links and axle", "axle wrap") { Also = "axle wrap is a coordinate of the poses that every gap is searched over" },
        new("alignment", "axle centred by the track bar") { ServedBy = ["axle-stands-off-centre"] },
        new("alignment", "wheelbase left and right, brackets square to the rail")
        {
            ServedBy = ["drop-brackets-tight", "axle-not-square"],
        },
        new("alignment", "ride heights") { ServedBy = ["ride-heights-read-again"] },
        new("alignment", "caster, camber, toe from a gauge") { ServedBy = ["alignment-measured"] },
        new("bodywork", "body lift: fan to shroud, levers, engine") { ServedBy = ["fan-near-shroud", "lever-strikes-bodywork", "engine-near-frame-or-bodywork"] },
        new("bodywork", "body lift: steering shaft, filler hose, earth straps, bumper brackets") { ServedBy = ["body-lift-fastened", "earth-straps-reach", "steering-shaft-engaged"] },
        new("bodywork", "axle and springs clear of the bodywork") { ServedBy = ["suspension-strikes-bodywork"] },
        new("wiring and sensors", "clear of exhaust")
        {
            ServedBy = ["wiring-touches-exhaust", "wiring-near-exhaust"],
            Waits = "temperature: heat is judged by distance alone",
        },
        new("wiring and sensors", "clear of moving parts, held") { ServedBy = ["wiring-near-moving-part", "wiring-unsupported", "power-steering-hose-near-frame", "power-steering-hose-near-bodywork"] },
        new("wiring and sensors", "slack at droop") { ServedBy = ["wheel-speed-lead-pulled-tight", "wheel-speed-leads-reach"] },
        new("wiring and sensors", "height-sensor and headlamp links not over centre")
        {
            ServedBy = ["headlamps-aimed"],
            Waits = "over-centre: the links of sensors are not in the file",
        },
        new("wiring and sensors", "steering-angle zero, driver-assist aim") { ServedBy = ["steering-angle-zero", "driver-assist-aimed"] },
        new("tightening", "every rubber-bushed pivot tightened at ride height")
        {
            ServedBy = ["arm-bolts-tightened", "track-bar-bolts-tightened"],
            Also = "the tightening audit asks for each pivot",
        },
        new("tightening", "wheel nuts, bolts and U-bolts again after a first distance") { ServedBy = ["wheel-nuts-again", "suspension-bolts-again", "u-bolts-again"] },
        new("temporary state", "parts still missing and what must not be driven until then") { Also = "parts that the file declares absent or temporary are conditions of the decision" },
        new("road test", "staged: standing brake hold, one wheel on a ramp") { ServedBy = ["standing-brake-test", "one-wheel-on-a-ramp"] },
        new("road test", "second gate: rub marks, leaks, temperature labels") { ServedBy = ["rub-marks-after-drive", "leaks-after-drive", "temperature-labels-read"] },
        new("road test", "local law named as not judged") { ServedBy = ["local-law-looked-up"] },
        new("pairs that no rule names", "no collision is passed over in silence") { ServedBy = ["moving-parts-collide", "moving-parts-close", "meant-contact-too-deep", "joined-parts-overlap"] },
    ];
}
