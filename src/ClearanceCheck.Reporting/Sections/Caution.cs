using ClearanceCheck.Inspecting.Results;

namespace ClearanceCheck.Reporting.Sections;

/// <summary>One caution and the findings at which it is said again.</summary>
internal sealed record Caution(string Text, Func<Finding, bool> MattersTo);
