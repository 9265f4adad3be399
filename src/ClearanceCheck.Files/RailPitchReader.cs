using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads <c>rail-pitch</c>: how far the frame rails leaned while the vehicle was measured.</summary>
internal static class RailPitchReader
{
    // A frame that leans more than this would slide off its lift. Common practice, no source.
    private const double MostDegrees = 20;

    public static void Read(MappingReader reader, VehicleDraft draft)
    {
        Field field = reader.Optional("rail-pitch");
        if (field.Angle() is not { } angle) return;
        if (Math.Abs(angle.Value.Degrees) > MostDegrees)
        {
            FileMessages.PitchOutOfRange(field, MostDegrees);
            return;
        }

        draft.Remember("rail-pitch", angle.Span);
        draft.RailPitch = new RailPitch(angle.Value.Degrees, Defaults.FinderDegrees, true);
        draft.Assume("rail-pitch", $"Give or take not typed: {NumberFormat.UpTo(Defaults.FinderDegrees, 2)} degrees each way (an angle finder's resolution; common practice, no source).");
    }
}
