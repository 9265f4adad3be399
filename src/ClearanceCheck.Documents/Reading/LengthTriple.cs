using ClearanceCheck.Units;

namespace ClearanceCheck.Documents.Reading;

/// <summary>Three lengths of a point, in the frame that the file declares.</summary>
public readonly record struct LengthTriple(LengthReading X, LengthReading Y, LengthReading Z);
