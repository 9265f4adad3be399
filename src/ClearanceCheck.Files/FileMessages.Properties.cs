using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Messages about what a part's entry says beside its shape.</summary>
internal static partial class FileMessages
{
    public static void PropertyOutOfRange(Field field, PartProperty property, double most) => field.Fault(
        "file.property-out-of-range",
        FormattableString.Invariant($"`{property.Id}` is more than 0 and at most {most} {property.Unit}."),
        $"To come by it, {property.HowToTake}.");
}
