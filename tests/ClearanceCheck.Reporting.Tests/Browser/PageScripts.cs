namespace ClearanceCheck.Reporting.Tests.Browser;

/// <summary>Checks that run inside the page; each returns what it found wrong.</summary>
internal static class PageScripts
{
    /// <summary>Texts under 4.5:1, and verdicts, severities, decisions and figures under 7:1 (contrast of WCAG 2.2, from the relative luminance of the two colours).</summary>
    public const string WeakContrast =
        """
        () => {
          const parse = c => { const m = c.match(/[\d.]+/g).map(Number); return { r: m[0], g: m[1], b: m[2], a: m[3] ?? 1 }; };
          const part = v => { v /= 255; return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4; };
          const light = c => 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b);
          const ground = e => { for (; e; e = e.parentElement) { const c = parse(getComputedStyle(e).backgroundColor); if (c.a > 0) return c; } return { r: 255, g: 255, b: 255 }; };
          const strong = 'h1, .meaning, .severity, .chip, .figures dd, .verdict-line, .loud, .caution-line, .actions, .reasons';
          const weak = [];
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const element = walker.currentNode.parentElement;
            if (!walker.currentNode.data.trim() || element.closest('template, style') || !element.checkVisibility()) continue;
            const style = getComputedStyle(element);
            const color = parse(element.closest('svg') ? style.fill : style.color);
            const a = light(color), b = light(ground(element));
            const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
            if (ratio < (element.closest(strong) ? 7 : 4.5)) weak.push(ratio.toFixed(2) + ' ' + walker.currentNode.data.trim());
          }
          return weak;
        }
        """;

    /// <summary>Visible texts under 16 px as they stand on the screen, drawings included.</summary>
    public const string SmallText =
        """
        () => {
          const small = [];
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const element = walker.currentNode.parentElement;
            if (!walker.currentNode.data.trim() || element.closest('template, style') || !element.checkVisibility()) continue;
            const svg = element.closest('svg');
            const scale = svg ? element.getScreenCTM().a : 1;
            const size = parseFloat(getComputedStyle(element).fontSize) * scale;
            // A drawing in a narrow column may be a touch smaller than its own units.
            if (size < (svg ? 15 : 16)) small.push(size.toFixed(1) + ' ' + walker.currentNode.data.trim());
          }
          return small;
        }
        """;

    /// <summary>Texts and letters of drawings that reach out of their frame.</summary>
    public const string TextCutOff =
        """
        () => [...document.querySelectorAll('svg.drawing')].flatMap(drawing => {
          const frame = drawing.querySelector('.frame').getBoundingClientRect();
          return [...drawing.querySelectorAll('.dimension-text, .letter-disc')].filter(e => {
            const r = e.getBoundingClientRect();
            return r.left < frame.left || r.right > frame.right || r.top < frame.top || r.bottom > frame.bottom;
          }).map(e => e.textContent || 'letter');
        })
        """;

    /// <summary>Visible links and openers under 44 px in height or width.</summary>
    public const string SmallTargets =
        """
        () => [...document.querySelectorAll('a, summary, button, input')]
          .filter(e => e.checkVisibility({ contentVisibilityAuto: true }))
          .filter(e => { const r = e.getBoundingClientRect(); return r.height < 44 || r.width < 44; })
          .map(e => e.textContent)
        """;
}
