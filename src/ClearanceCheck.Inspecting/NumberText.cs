using ClearanceCheck.Units;

namespace ClearanceCheck.Inspecting;

/// <summary>Numbers in sentences: no more digits than they deserve.</summary>
internal static class NumberText
{
    public static string Short(double value) => NumberFormat.UpTo(value, 2);
}
