using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Rules;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Planning;

/// <summary>Limits that hang on a property of the part, for the parts of one vehicle.</summary>
internal static class LimitsOfParts
{
    /// <summary>What a rule's limit comes to for a part.</summary>
    public static LimitForPart Of(RuleLimit limit, Part part, Vehicle vehicle) => limit.For(word => PartProperties.Find(word)!.Of(part, vehicle.Parameters));

    /// <summary>What is needed where the file does not say the property.</summary>
    public static string Needed(LimitForPart.Missing missing, Part part)
    {
        PartProperty property = PartProperties.Find(missing.Property)!;
        return $"the limit hangs on the {property.Name} of {part.Name}: {property.HowToTake}, and type `{property.Id}`";
    }

    /// <summary>A part that is smaller than anything the rule's table names.</summary>
    public static NotInspectedItem Below(LimitForPart.NotCovered small, Rule rule, Part part)
    {
        PartProperty property = PartProperties.Find(small.Property)!;
        return new NotInspectedItem(
            $"{rule.Title}: {part.Name}", $"its {property.Name} of {Shown(small.Value)} {property.Unit} lies below the first step of the rule's table, {Shown(small.First)} {property.Unit}");
    }

    private static string Shown(double value) => NumberFormat.UpTo(value, 2);
}
