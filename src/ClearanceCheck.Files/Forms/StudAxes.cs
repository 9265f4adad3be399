using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Geometry;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>Points on the axes of the studs or bolts that hold a rod: <c>axis-first</c>, <c>axis-second</c>.</summary>
internal sealed class StudAxes
{
    // No ball stud, rod end or bushing leans this far as it is mounted. Common practice, no source.
    private const double MostDegrees = 60;

    private readonly Placed<LengthTriple>? first;
    private readonly Placed<LengthTriple>? second;

    private StudAxes(Placed<LengthTriple>? first, Placed<LengthTriple>? second, bool isFaulty) => (this.first, this.second, IsFaulty) = (first, second, isFaulty);

    /// <summary>True when one is typed that can't be read.</summary>
    public bool IsFaulty { get; }

    public static StudAxes Type(MappingReader reader)
    {
        Field firstField = reader.Optional("axis-first"), secondField = reader.Optional("axis-second");
        Placed<LengthTriple>? first = firstField.Triple(), second = secondField.Triple();
        return new StudAxes(first, second, (firstField.IsPresent && first is null) || (secondField.IsPresent && second is null));
    }

    /// <summary>The link with its studs; null when one can't be a stud of it, which is said.</summary>
    public PartForm.Link? On(PartSource part, PartForm.Link link)
    {
        if (first is null && second is null) return link;
        if (!(IsSound(part, first, link.First, link.Second) & IsSound(part, second, link.Second, link.First))) return null;
        if (first is null) part.Assume(OneSided("first"));
        if (second is null) part.Assume(OneSided("second"));
        return link with { FirstAxis = Point(part, "axis-first", first, link.First), SecondAxis = Point(part, "axis-second", second, link.Second) };
    }

    private static string OneSided(string end) => $"No point ahead of a stud at its {end} end was typed: the angle of that joint is not looked at.";

    private static MeasuredPoint? Point(PartSource part, string key, Placed<LengthTriple>? typed, Place end) =>
        typed is null ? null : part.Point(key, typed, part.Joint(), end.Body, null);

    private static bool IsSound(PartSource part, Placed<LengthTriple>? typed, Place end, Place other)
    {
        if (typed is null) return true;
        Vector3d at = part.Draft.At(end.At), axis = typed.Value.Millimetres() - at, line = part.Draft.At(other.At) - at;
        if (axis.Length < Ends.LeastApartMm)
        {
            FileMessages.AxisIsEnd(part.Draft.Diagnostics, typed);
            return false;
        }

        double degrees = Trigonometry.DegreesPerRadian * Trigonometry.Atan2(Math.Abs(Vector3d.Dot(axis, line)), Vector3d.Cross(axis, line).Length);
        if (degrees <= MostDegrees) return true;
        FileMessages.RodLeansTooFar(part.Draft.Diagnostics, typed, degrees, MostDegrees);
        return false;
    }
}
