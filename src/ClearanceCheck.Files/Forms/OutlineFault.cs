namespace ClearanceCheck.Files.Forms;

/// <summary>What is wrong with the outline of a plate, and what would be right.</summary>
internal sealed record OutlineFault(string Id, string Message, string Help);
