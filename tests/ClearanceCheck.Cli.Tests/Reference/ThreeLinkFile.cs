using System.Globalization;
using System.Text;

namespace ClearanceCheck.Cli.Tests.Reference;

/// <summary>
/// The three-link axle of the reference table typed as a free layout: three links and a track bar between chassis and axle.
/// Invented coordinates, the inputs of the table in <see cref="ClearanceCheck.Mechanics.Tests.Linkages.ThreeLinkAxleTable"/>.
/// </summary>
internal sealed class ThreeLinkFile
{
    private readonly Dictionary<string, (double[] Frame, double[] Axle)> rods = new()
    {
        ["lower-left"] = ([-920, 430, -15], [-20, 505, -88]),
        ["lower-right"] = ([-920, -430, -15], [-20, -505, -88]),
        ["upper"] = ([-705, 245, 175], [-30, 255, 138]),
        ["track-bar"] = ([85, 470, 172], [55, -445, 83]),
    };

    public ThreeLinkFile Without(string rod)
    {
        rods.Remove(rod);
        return this;
    }

    public ThreeLinkFile With(string rod, double[] frame, double[] axle)
    {
        rods[rod] = (frame, axle);
        return this;
    }

    public string Write()
    {
        var text = new StringBuilder("""
            format: 1
            vehicle: { name: Reference axle }
            scope: [ rear ]
            unit: mm
            within: 1 mm
            states: { ride: { on: level-floor } }
            measured-in: ride
            axles:
              rear:
                layout: free
                travel: { droop: 130 mm, bump: 130 mm }
                bodies: [ axle ]
                joints:

            """);
        foreach ((string name, (double[] frame, double[] axle)) in rods)
            text.Append(CultureInfo.InvariantCulture, $"      {name}: {{ kind: rod, between: [ chassis, rear/axle ], at: [ {Point(frame)}, {Point(axle)} ] }}\n");
        return text.Append("""
                wheels:
                  left: { body: rear/axle, hub: [0, 795, 0] }
                  right: { body: rear/axle, hub: [0, -795, 0] }
            parts:
              tube: { kind: axle-tube, body: rear/axle, outside-diameter: 80 mm, path: [ [0, 700, 0], [0, -700, 0] ] }
              line: { kind: brake-line, body: chassis, outside-diameter: 5 mm, path: [ [-300, 300, 200], [300, 280, 190] ] }

            """).ToString();
    }

    private static string Point(double[] at) => $"[{string.Join(", ", at.Select(c => c.ToString(CultureInfo.InvariantCulture)))}]";
}
