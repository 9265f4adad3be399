using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Steerings;

/// <summary>A tie rod on each side, from what moves it to the knuckle.</summary>
internal static class TieRods
{
    public static ImmutableArray<LayoutPoint> Points(string inner) =>
    [
        .. AxleLayout.Sides.SelectMany(left => new LayoutPoint[]
        {
            new($"tie-rod-{AxleLayout.Side(left)}-inner", $"the middle of the inner joint of the {AxleLayout.Side(left)} tie rod", inner),
            new($"tie-rod-{AxleLayout.Side(left)}-outer", $"the middle of the ball that joins the {AxleLayout.Side(left)} tie rod to the knuckle", AxleLayout.Knuckle(left)),
        }),
    ];

    public static IEnumerable<Joint> Joints(LayoutPlaces places, string inner) => AxleLayout.Sides.Select(left =>
    {
        string rod = $"tie-rod-{AxleLayout.Side(left)}";
        return new Joint.Rod(rod, places.Body(inner), places.At($"{rod}-inner"), places.Body(AxleLayout.Knuckle(left)), places.At($"{rod}-outer"));
    });
}
