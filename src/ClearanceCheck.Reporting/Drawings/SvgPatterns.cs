using ClearanceCheck.Reporting.Pages;

namespace ClearanceCheck.Reporting.Drawings;

/// <summary>The hatchings, once a page: the two parts must tell apart in grey and without colour.</summary>
internal static class SvgPatterns
{
    public static RawHtml Shared { get; } = new(
        """
        <svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false">
        <defs>
        <pattern id="hatch-first" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="hatch-ground" width="8" height="8"/><rect class="hatch-line" width="2" height="8"/></pattern>
        <pattern id="hatch-second" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><rect class="hatch-ground" width="8" height="8"/><rect class="hatch-line" width="1.4" height="8"/><rect class="hatch-line" width="8" height="1.4"/></pattern>
        <pattern id="hatch-unreachable" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="unreachable-ground" width="7" height="7"/><rect class="unreachable-line" width="1.5" height="7"/></pattern>
        </defs>
        </svg>
        """);
}
