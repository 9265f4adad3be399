using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>The catalogue of properties that limits may hang on: a new one is one line here.</summary>
public static class PartProperties
{
    public static ImmutableArray<PartProperty> All { get; } =
    [
        new("outside-diameter", "outside diameter", "mm", "measure it with a caliper", OutsideDiameter),
        new("free-length", "free length", "mm", "measure it off the vehicle, or read it in the maker's list", FreeLength),
        new("joint-limit", "largest angle of its joint", "deg", "turn the joint by hand to its end and read the angle, or take the maker's figure", _ => null)
        {
            TypedFor = ["driveshaft", "rod-end", "link", "steering-rod", "shock"],
        },
    ];

    public static PartProperty? Find(string id) => All.FirstOrDefault(p => p.Id == id);

    private static MeasuredLength? OutsideDiameter(PartForm form) => form switch
    {
        PartForm.Chain chain => chain.OutsideDiameter,
        PartForm.Hose hose => hose.OutsideDiameter,
        PartForm.Link link => link.OutsideDiameter,
        PartForm.Coil coil => coil.OutsideDiameter,
        _ => null,
    };

    private static MeasuredLength? FreeLength(PartForm form) => form switch
    {
        PartForm.Hose hose => hose.FreeLength,
        PartForm.Coil coil => coil.FreeLength,
        _ => null,
    };
}
