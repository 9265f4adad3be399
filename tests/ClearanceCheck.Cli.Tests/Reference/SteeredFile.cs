namespace ClearanceCheck.Cli.Tests.Reference;

/// <summary>Steered axles as files, with something added that is wrong. Invented coordinates.</summary>
internal static class SteeredFile
{
    private const string Head = """
        format: 1
        vehicle: { name: Steered axle }
        unit: mm
        within: 1 mm
        states: { ride: { on: level-floor } }
        measured-in: ride

        """;

    /// <summary>The reference axle as a free layout with one knuckle that the steering turns.</summary>
    /// <param name="joints">Lines of joints more.</param>
    /// <param name="bodies">Bodies more, each after a comma.</param>
    public static string Write(string joints, string bodies = "") => Head + $$"""
        scope: [ rear ]
        axles:
          rear:
            layout: free
            travel: { droop: 130 mm, bump: 130 mm }
            bodies: [ axle, knuckle{{bodies}} ]
            joints:
              lower-left: { kind: rod, between: [ chassis, rear/axle ], at: [ [-920, 430, -15], [-20, 505, -88] ] }
              lower-right: { kind: rod, between: [ chassis, rear/axle ], at: [ [-920, -430, -15], [-20, -505, -88] ] }
              upper: { kind: rod, between: [ chassis, rear/axle ], at: [ [-705, 245, 175], [-30, 255, 138] ] }
              track-bar: { kind: rod, between: [ chassis, rear/axle ], at: [ [85, 470, 172], [55, -445, 83] ] }
              kingpin: { kind: hinge, between: [ rear/axle, rear/knuckle ], at: [ [6, 690, -98] ], axis: [-12, 652, 102] }
        {{joints}}    wheels:
              left: { body: rear/knuckle, hub: [0, 795, 0], travel-on: rear/axle }
              right: { body: rear/axle, hub: [0, -795, 0] }
            steering: { turns: kingpin, lock: 30 deg }
        parts:
          tube: { kind: axle-tube, body: rear/axle, outside-diameter: 80 mm, path: [ [0, 600, 0], [0, -600, 0] ] }

        """;

    /// <summary>A first look at a steered axle whose track bar has these two ends.</summary>
    public static string WriteFirstLook(string frame, string axle) => Head + $$"""
        scope: [ front ]
        axles:
          front:
            layout: beam-axle-simple
            arm-length: 900 mm
            travel: { droop: 100 mm, bump: 100 mm }
            steering: { kind: lock-only, lock: 30 deg }
            points:
              ride:
                hub-left: [0, 795, 0]
                hub-right: [0, -795, 0]
                track-bar-axle: {{axle}}
                track-bar-frame: {{frame}}
                arm-pivot-side: [-900, 0, 0]
                kingpin-left-lower: [6, 690, -98]
                kingpin-left-upper: [-12, 652, 102]
                kingpin-right-lower: [6, -690, -98]
                kingpin-right-upper: [-12, -652, 102]
        parts:
          tube: { kind: axle-tube, body: front/axle, outside-diameter: 80 mm, path: [ [0, 600, 0], [0, 400, 0] ] }

        """;
}
