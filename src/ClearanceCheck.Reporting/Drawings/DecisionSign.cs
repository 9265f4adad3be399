using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Pages;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>A shape for each decision, so that it is known from afar and in grey: a barred ring, a half-filled ring, an open ring, a broken ring.</summary>
internal static class DecisionSign
{
    public static RawHtml Of(DecisionKind kind) => kind switch
    {
        DecisionKind.Held => Sign("<circle class=\"ring\" cx=\"32\" cy=\"32\" r=\"26\"/><path class=\"solid\" d=\"M14 26h36v12H14Z\"/>"),
        DecisionKind.Conditions => Sign("<circle class=\"ring\" cx=\"32\" cy=\"32\" r=\"26\"/><path class=\"solid\" d=\"M32 6a26 26 0 0 1 0 52Z\"/>"),
        DecisionKind.Clear => Sign("<circle class=\"ring\" cx=\"32\" cy=\"32\" r=\"26\"/>"),
        DecisionKind.None => Sign("<circle class=\"ring broken\" cx=\"32\" cy=\"32\" r=\"26\"/>"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static RawHtml Sign(string shapes) => new($"<svg class=\"decision-sign\" viewBox=\"0 0 64 64\" aria-hidden=\"true\" focusable=\"false\">{shapes}</svg>");
}
