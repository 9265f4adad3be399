using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Forms;
using ClearanceCheck.Files.States;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Axles;

/// <summary>Reads <c>toe</c> of an axle: from wheel to wheel in front and behind, and how far apart those places are.</summary>
internal static class ToeReader
{
    // No axle that drives straight stands with more. Common practice, no source.
    private const double MostDegrees = 6;

    private static readonly LengthRange Across = Sizes.Range(300, 4000, "a reading from wheel to wheel");
    private static readonly LengthRange Over = Sizes.Range(200, 1500, "a rim's diameter or a toe board");

    public static ToeReading? Read(MappingReader reader, string axle, AxleGeometry? geometry, VehicleDraft draft)
    {
        double? within = Within.Read(reader);
        Placed<LengthReading>? front = reader.Required("front", "from wheel to wheel in front of the axle, at the hubs' height").Length(Across);
        Placed<LengthReading>? rear = reader.Required("rear", "from wheel to wheel behind the axle, between the same places of both wheels").Length(Across);
        Placed<LengthReading>? over = reader.Required("over", "from the place in front to the place behind on one wheel: the rim's diameter, or the board's length").Length(Over);
        if (front is null || rear is null || over is null) return null;
        double total = 2 * Trigonometry.DegreesPerRadian * Trigonometry.Asin(Math.Clamp((Mm(rear) - Mm(front)) / (2 * Mm(over)), -1, 1));
        if (Math.Abs(total) > MostDegrees)
        {
            FileMessages.ToeOutOfRange(reader, total, MostDegrees);
            return null;
        }

        string path = $"axles/{axle}/toe";
        Within tape = Within.For(within, draft.FileWithin, Defaults.TapedGapMm, "a tape from wheel to wheel");
        Assume(path, axle, geometry, draft);
        return new ToeReading(draft.Length(path + "/front", front, tape), draft.Length(path + "/rear", rear, tape), draft.Length(path + "/over", over, tape));
    }

    private static void Assume(string path, string axle, AxleGeometry? geometry, VehicleDraft draft)
    {
        string use = geometry is null || geometry.MeasuredIn == MeasuringStates.Ride
            ? "Angles of the wheels start from it" : "Its change over the travel is counted without it, since the axle was not measured at ride height";
        draft.Assume(path, $"Taken as read at ride height with the {axle} wheels straight ahead, and as shared alike by both. {use}; the tires' shapes stand without it.");
    }

    private static double Mm(Placed<LengthReading> typed) => typed.Value.Length.Millimetres;
}
