using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Pages;

/// <summary>A finding and the element id that it has on the page.</summary>
public sealed record AnchoredFinding(Finding Finding, string Anchor);
