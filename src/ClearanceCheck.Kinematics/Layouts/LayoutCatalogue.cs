using System.Collections.Immutable;

namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>All layouts by their word in files: a new one is one class and one line here.</summary>
public static class LayoutCatalogue
{
    public static ImmutableArray<AxleLayout> All { get; } = [new ThreeLinkLayout(), new FreeLayout()];

    public static AxleLayout? Find(string id) => All.FirstOrDefault(l => l.Id == id);
}
