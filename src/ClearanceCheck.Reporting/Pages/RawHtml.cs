namespace ClearanceCheck.Reporting.Pages;

/// <summary>Markup that this room wrote itself; the only value that a template writes without encoding it.</summary>
public sealed record RawHtml(string Markup);
