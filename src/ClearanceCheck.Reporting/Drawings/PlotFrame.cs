namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The edges of a plot's field in the drawing's units.</summary>
internal sealed record PlotFrame(double Left, double Right, double Top, double Bottom);
