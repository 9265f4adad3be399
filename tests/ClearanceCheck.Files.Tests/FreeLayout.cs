using System.Text;

namespace ClearanceCheck.Files.Tests;

/// <summary>The axle of the fixture one-line, spelled out as a free layout.</summary>
internal static class FreeLayout
{
    /// <summary>The axle's text in the fixture.</summary>
    public static string ThreeLink { get; } = Block();

    /// <summary>The same axle as a free layout, with keys more.</summary>
    public static string Text(string keys) => $$"""
            layout: free
            {{keys}}
            travel: { droop: 180 mm, bump: 160 mm }
            bodies: [ axle ]
            joints:
              left: { kind: rod, between: [ chassis, rear/axle ], at: [ [288, 432, -232], [-590, 505, -452] ] }
              right: { kind: rod, between: [ chassis, rear/axle ], at: [ [288, -430, -233], [-590, -506, -454] ] }
              upper: { kind: rod, between: [ chassis, rear/axle ], at: [ [70, 246, -60], [-575, 255, -262] ] }
              across: { kind: rod, between: [ chassis, rear/axle ], at: [ [-700, 470, -132], [-668, -445, -320] ] }
            wheels: { left: { body: rear/axle, hub: [-612, 738, -402] }, right: { body: rear/axle, hub: [-612, -738, -404] } }
        
        """.Replace("\n\n", "\n", StringComparison.Ordinal);

    private static string Block()
    {
        string text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span);
        return text[text.IndexOf("    layout: three-link", StringComparison.Ordinal)..text.IndexOf("\nparts:", StringComparison.Ordinal)];
    }
}
