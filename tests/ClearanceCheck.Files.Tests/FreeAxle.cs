namespace ClearanceCheck.Files.Tests;

/// <summary>The inspection with every form, its axle given as a free layout: a rod and a ball on one body, or a body a wheel.</summary>
internal static class FreeAxle
{
    /// <summary>Reads it with some keys more at the axle.</summary>
    /// <param name="keys">Lines at the indent of the axle's keys, in place of its wheel and links.</param>
    /// <param name="split">True for two bodies, one a wheel.</param>
    /// <param name="rods">False for an axle without its rod.</param>
    public static InspectionReading Read(string keys, bool split = false, bool rods = true)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Inspections", "every-form.yaml")).ReplaceLineEndings("\n");
        int from = text.IndexOf("    layout: three-link", StringComparison.Ordinal), to = text.IndexOf("\nparts:", StringComparison.Ordinal);
        int hose = text.IndexOf("    touches:", StringComparison.Ordinal);
        return EveryForm.Read((text[hose..], ""), (text[from..to], $$"""
                layout: free
                travel: { droop: 150 mm, bump: 100 mm }
                bodies: [ axle{{(split ? ", right" : "")}} ]
                joints:
                  lower: {{(rods ? "{ kind: rod, between: [ chassis, rear/axle ], at: [ [300, 400, -200], [-500, 400, -250] ] }" : "{ kind: ball, between: [ chassis, rear/axle ], at: [ [300, 400, -200] ] }")}}
                  pin: { kind: ball, between: [ chassis, rear/axle ], at: [ [300, 0, -200] ] }
                wheels: { left: { body: rear/axle, hub: [-612, 738, -402] }, right: { body: rear/{{(split ? "right" : "axle")}}, hub: [-612, -738, -404] } }
                {{keys}}

            """));
    }
}
