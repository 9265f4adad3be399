using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A steering stop: the head of a bolt and the pad it meets, as they stand with the wheels straight ahead.</summary>
internal static class SteeringStopForm
{
    public static PartForm? Read(PartSource part)
    {
        Within surface = part.Surface("a stop's bolt or pad");
        Place? first = Ends.Read(part, "bolt", "the middle of the bolt's head, wheels straight ahead", surface);
        Place? second = Ends.Read(part, "pad", "the place on the pad that the bolt meets at lock, wheels straight ahead", surface);
        if (first is null || second is null) return null;
        if (!Ends.AreSound(part, first, second, "the steering stop") || !Ends.Move(part, first, second, "the steering stop")) return null;
        if ((part.Draft.AxleOf(first.Body) ?? part.Draft.AxleOf(second.Body)) is { Steering: null } axle)
        {
            FileMessages.NothingToSteer(part, axle.Name);
            return null;
        }

        part.Assume($"It acts along the line between bolt and pad and ends the steering {NumberFormat.UpTo(Defaults.SteeringStopMm, 1)} mm beyond contact (common practice, no source).");
        return new PartForm.SteeringStop(first, second);
    }
}
