namespace ClearanceCheck.Kinematics.Layouts;

/// <summary>A length a layout needs that is no point.</summary>
/// <param name="Name">The word in files.</param>
/// <param name="Where">The sentence that tells a person what it is.</param>
/// <param name="DefaultMm">What it is taken as where nobody typed it (common practice, no source); null where it has to be typed.</param>
/// <param name="LowMm">Shorter ones are refused.</param>
/// <param name="HighMm">Longer ones are refused.</param>
public sealed record LayoutFigure(string Name, string Where, double? DefaultMm, double LowMm, double HighMm);
