using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Forms;

/// <summary>A hose between two ferrules.</summary>
internal static class HoseForm
{
    private static readonly LengthRange FreeLength = Sizes.Range(10, 5000, "a hose's free length");

    public static PartForm? Read(PartSource part)
    {
        Within surface = part.Surface("a surface of a pipe or hose");
        Place? upper = Ends.Read(part, "upper", "where the rubber leaves the upper ferrule", surface);
        Place? lower = Ends.Read(part, "lower", "where the rubber leaves the lower ferrule", surface);
        Placed<LengthReading>? free = part.Reader.Required("free-length", "the length of the rubber alone, ferrule to ferrule").Length(FreeLength);
        Placed<LengthReading>? diameter = part.Reader.Required("outside-diameter", "its outside diameter").Length(Sizes.Diameter);
        if (upper is null || lower is null || free is null || diameter is null || !Ends.AreSound(part, upper, lower, "the hose")) return null;
        return new PartForm.Hose(upper, lower, part.Draft.Length(part.Path("free-length"), free, part.Tape()), part.Size("outside-diameter", diameter));
    }
}
