using System.Collections.Immutable;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>All layouts by their word in files: a new one is one class and one line here.</summary>
public static class LayoutCatalogue
{
    public static ImmutableArray<AxleLayout> All { get; } =
    [
        new ThreeLinkLayout(), new LinkLayout(hasTrackBar: false), new LinkLayout(hasTrackBar: true), new RadiusArmLayout(), new LeafSpringLayout(),
        new SplitBeamLayout(), new DoubleWishboneLayout(), new BeamAxleSimpleLayout(),
        new PositionsLayout(), new FreeLayout(),
    ];

    public static AxleLayout? Find(string id) => All.FirstOrDefault(l => l.Id == id);

    /// <summary>The layout of an axle.</summary>
    /// <exception cref="ArgumentException">No such layout.</exception>
    public static AxleLayout Of(Vehicles.Axle axle) => Find(axle.Layout) ?? throw new ArgumentException($"No layout {axle.Layout}.", nameof(axle));
}
