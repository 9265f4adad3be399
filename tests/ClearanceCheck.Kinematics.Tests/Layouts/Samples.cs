using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Tests.Tables;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics.Tests.Layouts;

/// <summary>One axle of each layout; invented, of realistic size. Those of reference tables carry their points.</summary>
internal static class Samples
{
    private const double RackMm = 70;

    public static readonly string[] Layouts =
        ["three-link", "four-link", "five-link", "radius-arms", "leaf-springs", "split-beams", "double-wishbones", "beam-axle-simple"];

    public static LayoutVehicle Of(string layout, string? steering = null, double limit = 120, bool wraps = false)
    {
        var vehicle = new LayoutVehicle(layout)
        {
            Steering = steering is null ? null : new Steering(steering, Lock(steering, layout), Lock(steering, layout), null),
            Limit = limit,
            Wrap = layout == "leaf-springs" && wraps ? new WrapRange(-0.05, 0.09) : null,
        };
        Suspension(vehicle, layout);
        if (steering is not null) Steer(vehicle, steering, layout);
        return vehicle;
    }

    // With its arms ahead of the axle a linkage goes over its centre early: the other wheel turns farther than the one that is set.
    private static double Lock(string steering, string layout) => steering switch
    {
        "rack" when layout == "double-wishbones" => RackMm,
        "cross-over" or "lock-only" => 0.6,
        _ => 0.3,
    };

    public static Vector3d V(double[] v) => ReferenceTable.Vector(v);

    private static void Suspension(LayoutVehicle vehicle, string layout)
    {
        switch (layout)
        {
            case "three-link":
                Dictionary<string, double[]> three = ReferenceTable.Inputs("three-link-axle");
                string[] rods = ["lower-link-left", "lower-link-right", "upper-link", "track-bar"];
                for (int i = 0; i < 4; i++) vehicle.At($"{rods[i]}-frame", V(three[$"rod{i + 1}_frame"])).At($"{rods[i]}-axle", V(three[$"rod{i + 1}_axle"]));
                vehicle.Both("hub-*", 0, 795, 0);
                break;
            case "four-link":
                vehicle.Both("hub-*", 0, 790, 0).Both("lower-link-*-frame", -900, 420, -20).Both("lower-link-*-axle", -20, 520, -90)
                    .Both("upper-link-*-frame", -700, 480, 160).Both("upper-link-*-axle", -30, 90, 140);
                break;
            case "five-link":
                Dictionary<string, double[]> four = ReferenceTable.Inputs("four-link-axle");
                string[] links = ["lower-link-left", "lower-link-right", "upper-link-left", "upper-link-right"];
                for (int i = 0; i < 4; i++) vehicle.At($"{links[i]}-frame", V(four[$"link{i + 1}_frame"])).At($"{links[i]}-axle", V(four[$"link{i + 1}_axle"]));
                vehicle.Both("hub-*", 0, 805, 0).At("track-bar-frame", V(four["rod1_frame"])).At("track-bar-axle", V(four["rod1_axle"]));
                break;
            case "radius-arms":
                Dictionary<string, double[]> arms = ReferenceTable.Inputs("radius-arm-bodies");
                vehicle.Both("hub-*", 0, 790, 0).At("track-bar-frame", V(arms["rod1_frame"])).At("track-bar-axle", V(arms["rod1_axle"]))
                    .Both("radius-arm-*-frame", V(arms["L_frame_bush"])).Both("radius-arm-*-axle-front", V(arms["L_axle_front_bush"]))
                    .Both("radius-arm-*-axle-rear", V(arms["L_axle_rear_bush"]));
                break;
            case "leaf-springs":
                vehicle.Both("hub-*", 4, 738, -112).Both("spring-eye-*-frame", 606, 520, -20).Both("spring-centre-pin-*", 0, 520, -75)
                    .Both("shackle-*-frame", -648, 520, 80).Both("shackle-*-spring", -690, 520, -30).Figure("clamp-length", 120);
                break;
            case "split-beams":
                vehicle.Both("hub-*", 0, 805, 0).Both("beam-pivot-of-*", 25, -215, -85).Both("radius-arm-*-pivot", -890, 385, -45);
                break;
            case "double-wishbones":
                Dictionary<string, double[]> bones = ReferenceTable.Inputs("double-wishbone");
                vehicle.Both("hub-*", V(bones["hub"])).Both("lower-arm-*-front", V(bones["lf"])).Both("lower-arm-*-rear", V(bones["lr"])).Both("lower-ball-*", V(bones["lo"]))
                    .Both("upper-arm-*-front", V(bones["uf"])).Both("upper-arm-*-rear", V(bones["ur"])).Both("upper-ball-*", V(bones["uo"]))
                    .Both("tie-rod-*-inner", V(bones["ti"])).Both("tie-rod-*-outer", V(bones["to"]));
                break;
            case "beam-axle-simple":
                vehicle.Both("hub-*", 0, 790, 0).At("arm-pivot-side", -900, 0, 0).At("track-bar-frame", 95, 455, 165).At("track-bar-axle", 60, -430, 72).Figure("arm-length", 900);
                break;
        }
    }

    private static void Steer(LayoutVehicle vehicle, string steering, string layout)
    {
        Dictionary<string, double[]> given = ReferenceTable.Inputs("crossover-steering");
        if (layout != "double-wishbones")
            foreach (string side in (string[])["left", "right"])
                foreach (string end in (string[])["lower", "upper"])
                    vehicle.At($"kingpin-{side}-{end}", V(given[$"kp{(side == "left" ? "L" : "R")}_{end}"]));
        vehicle.At("pitman-pivot", V(given["sector"])).At("pitman-axis", V(given["sector"]) + V(given["sector_axis"]));
        switch (steering)
        {
            case "cross-over":
                vehicle.At("drag-link-pitman", V(given["pitman_end"])).At("drag-link-knuckle", V(given["drag_outer"])).At("tie-rod-left", V(given["tie_L"])).At("tie-rod-right", V(given["tie_R"]));
                break;
            case "inverted-y":
                vehicle.At("drag-link-pitman", 165, 392, 60).At("drag-link-knuckle", 150, -640, 30).At("tie-rod-link", 157, 250, 40).At("tie-rod-knuckle", 150, 640, 30);
                break;
            case "parallel":
                vehicle.At("pitman-pivot", 310, 395, 40).At("pitman-axis", 310, 395, 140).At("idler-pivot", 310, -395, 40).At("idler-axis", 310, -395, 140)
                    .At("relay-pitman", 165, 392, -40).At("relay-idler", 165, -392, -40);
                vehicle.Both("tie-rod-*-inner", layout == "double-wishbones" ? -148 : 160, layout == "double-wishbones" ? 392 : 180, -40).Both("tie-rod-*-outer", layout == "double-wishbones" ? -137 : 150, layout == "double-wishbones" ? 738 : 640, -50);
                break;
            case "rack" when layout != "double-wishbones":
                vehicle.Both("tie-rod-*-inner", 160, 300, 0).Both("tie-rod-*-outer", 150, 640, -10);
                break;
        }
    }
}
