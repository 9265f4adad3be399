namespace ClearanceCheck.Units;

/// <summary>What is wrong with a typed value and where.</summary>
/// <param name="Id">Stable id, such as <c>length.decimal-comma</c>.</param>
/// <param name="Offset">First character of the fault, counted from 0 in the text given.</param>
/// <param name="Extent">Number of characters at fault, at least 0.</param>
/// <param name="Message">What is wrong, a whole sentence.</param>
/// <param name="Help">What would be right, a whole sentence.</param>
public sealed record ParseFault(string Id, int Offset, int Extent, string Message, string Help);
