namespace ClearanceCheck.Vehicles;

/// <summary>A number of a part that a rule's limit may hang on.</summary>
/// <param name="Id">The word in rules and in the inspection file: <c>outside-diameter</c>.</param>
/// <param name="Name">In words, for reports.</param>
/// <param name="Unit"><c>mm</c> or <c>deg</c>.</param>
/// <param name="HowToTake">How somebody comes by it, a phrase that begins with a verb: for parts whose file lacks it.</param>
/// <param name="OfForm">What a part's form says of it; null for a form that does not have it, and for what stands beside the form.</param>
public sealed record PartProperty(string Id, string Name, string Unit, string HowToTake, Func<PartForm, MeasuredLength?> OfForm)
{
    /// <summary>Kinds whose entry in the inspection file may say it beside their shape; empty for what the shape itself says.</summary>
    public IReadOnlyCollection<string> TypedFor { get; init; } = [];

    /// <summary>The value of a part with its half-width, in <see cref="Unit"/>; null where the file does not say it.</summary>
    public (double Value, double HalfWidth)? Of(Part part, ParameterVector parameters)
    {
        if (part.Properties.TryGetValue(Id, out double typed)) return (typed, 0);
        if (OfForm(part.Form) is not { } length) return null;
        return (length.At(parameters.Nominal), length.Indices.Sum(i => parameters.Parameters[i].HalfWidthMm));
    }
}
