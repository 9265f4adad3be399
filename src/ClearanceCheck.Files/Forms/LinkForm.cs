using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A straight tube between two joints: a link, a track bar, a steering rod.</summary>
internal static class LinkForm
{
    /// <summary>What is taken for granted about every link.</summary>
    public const string Straight = "Taken as a straight tube between its ends; a bent one is not covered.";

    public static PartForm? Read(PartSource part)
    {
        Place? first = Ends.Read(part, "first", "the middle of the joint at its first end", part.Joint());
        Place? second = Ends.Read(part, "second", "the middle of the joint at its second end", part.Joint());
        Placed<LengthReading>? diameter = part.Reader.Required("outside-diameter", "its outside diameter").Length(Sizes.Diameter);
        StudAxes studs = StudAxes.Type(part.Reader);
        if (first is null || second is null || diameter is null || studs.IsFaulty || !Ends.AreSound(part, first, second, "the link")) return null;
        part.Assume(Straight);
        return studs.On(part, new PartForm.Link(first, second, part.Size("outside-diameter", diameter)));
    }
}
