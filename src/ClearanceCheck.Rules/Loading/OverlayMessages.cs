using System.Globalization;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Rules.Layers;
using ClearanceCheck.Units;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Messages about overlays and the layers below them, one method a fault.</summary>
internal static class OverlayMessages
{
    public static void AmongLibraryFiles(Field field) => field.Fault(
        "rule.overlay-among-library", "This file is an overlay, and the files beside it are a library.", "Put the overlay into a folder of its own, and name that folder after the library's.");

    public static void NothingBelow(DiagnosticBag bag, LayerFiles overlay)
    {
        MappingEntry key = overlay.Files.Select(f => f.Root?.Find("overlay")).First(e => e is not null)!;
        bag.Add(Diagnostic.Error("rule.nothing-below", key.Key.Span, "An overlay changes a library, and there is no library below it.", "Name the library's folder before the overlay's."));
    }

    public static void SecondLibrary(DiagnosticBag bag, LayerFiles library)
    {
        if (library.Files.Select(f => f.Root?.Find("library")).FirstOrDefault(e => e is not null) is not { } key) return;
        bag.Add(Diagnostic.Error(
            "rule.second-library", key.Key.Span, "Two libraries can't count at once: overlays stand on one.", "Name one library; make the other an overlay: `overlay: ...`, `on: ...`, `rules: ...`."));
    }

    public static void ChangesNothing(MappingReader reader) => reader.Fault(
        "rule.changes-nothing", "The overlay changes nothing.", "Write `change:`, `switch-off:`, `rules:`, `items:` or `coverage:`.");

    public static void NoVersionBetween(Field before, VersionNumber from, VersionNumber to) => before.Fault(
        "rule.no-version-between", $"No version lies from {from} on and before {to}.", "Write the first version that fits behind `from`, and the first that no longer fits behind `before`.");

    public static void OtherOverlay(DiagnosticBag bag, OverlayFile first, OverlayFile other) => bag.Add(Diagnostic.Error(
        "rule.other-overlay",
        other.Name.Span,
        "Files of one overlay share its name, its version and what it stands on; this one does not.",
        "Write the same `overlay`, `version` and `on` in all files of the folder.",
        new RelatedSpan(first.Name.Span, $"{first.Name.Value} {first.Version.Value}")));

    public static void SameName(DiagnosticBag bag, OverlayHeader overlay) => bag.Add(Diagnostic.Error(
        "rule.same-layer-name", overlay.Name.Span, $"A layer below is called `{overlay.Name.Value}` too.", "Give the overlay a name of its own."));

    public static void OtherVersion(DiagnosticBag bag, OverlayHeader overlay, RuleLayer found) => bag.Add(Diagnostic.Error(
        "rule.other-base-version",
        overlay.On.Span,
        $"The overlay fits {overlay.On.Value} from {overlay.From} on and before {overlay.Before}, and below it stands {found.Version}.",
        "Look through the changes with the rules that stand there now, then widen `from` or `before`."));

    public static void ComesLater(DiagnosticBag bag, OverlayHeader overlay) => bag.Add(Diagnostic.Error(
        "rule.base-comes-later", overlay.On.Span, $"The overlay stands on `{overlay.On.Value}`, which comes after it.", $"Name the folder of `{overlay.On.Value}` first."));

    public static void StandsOnItself(DiagnosticBag bag, OverlayHeader overlay, IEnumerable<string> circle) => bag.Add(Diagnostic.Error(
        "rule.circular-base", overlay.On.Span, $"The overlay stands on itself: {string.Join(" on ", circle)}.", "One of them has to stand on the library."));

    public static void NoSuchLayer(DiagnosticBag bag, OverlayHeader overlay, IEnumerable<string> below)
    {
        string[] names = [.. below];
        string? nearest = NearestWord.Find(overlay.On.Value, names);
        bag.Add(Diagnostic.Error(
            "rule.no-such-base",
            overlay.On.Span,
            $"There is no `{overlay.On.Value}` below this overlay.",
            nearest is null ? $"Below it stands: {string.Join(", ", names)}." : $"Did you mean `{nearest}`?"));
    }

    public static void OtherQuantity(Field field, string id) => field.Fault(
        "rule.other-quantity", $"What `{id}` is about can't be changed.", "Write a rule of your own below `rules:`, and switch this one off if it has to go.");

    public static void EmptyChange(MappingReader reader, string id) => reader.Fault(
        "rule.empty-change", $"Nothing of `{id}` is changed.", "Write what is different, such as `limit: { at-least: 60 mm }`.");

    public static Diagnostic Twice(ScalarNode again, ScalarNode first) => Diagnostic.Error(
        "rule.changed-twice",
        again.Span,
        $"The overlay speaks of `{again.Text}` twice; the first counts.",
        "Keep one of the two.",
        new RelatedSpan(first.Span, "first here"));

    public static Diagnostic NoSuchRule(ScalarNode key, string section, IReadOnlyCollection<string> below)
    {
        string? nearest = NearestWord.Find(key.Text, below);
        return Diagnostic.Error(
            "rule.no-such-rule",
            key.Span,
            $"There is no rule, item or expectation `{key.Text}` to {(section == OverlayEntry.Change ? "change" : "switch off")}.",
            nearest is null ? "Run `rules list` to see what stands below." : $"Did you mean `{nearest}`?");
    }

    public static Diagnostic RuleBelow(ScalarNode key) => Diagnostic.Error(
        "rule.rule-below", key.Span, $"A layer below has `{key.Text}` already.", "Write it below `change:`, or give the new one an id of its own.");

    public static Diagnostic LooseningNeeds(ScalarNode key, string what, IReadOnlyList<string> missing) => Diagnostic.Error(
        "rule.loosening-needs",
        key.Span,
        $"This asks less than the rule below ({what}), and {And(missing)} {(missing.Count == 1 ? "is" : "are")} missing: a reason, a name and a last day are needed for that.",
        "Write `because: \"...\"`, `by: NAME` and `until: 2031-12-31`.");

    public static Diagnostic SwitchOffWithoutReason(ScalarNode key) => Diagnostic.Error(
        "rule.switch-off-without-reason", key.Span, $"`{key.Text}` is switched off without a reason.", "Write `because: \"...\"`.");

    public static Diagnostic PastItsDay(ScalarNode key, string section, DateOnly until, DateOnly? today) => Diagnostic.Note(
        "rule.past-its-day",
        key.Span,
        $"This {(section == OverlayEntry.Change ? "change" : "switch-off")} of `{key.Text}` counted until {Day(until)}{(today is { } day ? $", and today is {Day(day)}" : "")}: the rule below counts again.",
        "Take it out, or look at the reason again and write a new day.");

    public static Diagnostic CoveredBy(ScalarNode key, ScalarNode by) => Diagnostic.Note(
        "rule.covered-entirely",
        key.Span,
        $"`{key.Text}` can never say more than `{by.Text}`, which asks at least as much of the same parts.",
        "Take it out, or make it stricter.",
        new RelatedSpan(by.Span, "the other rule"));

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string And(IReadOnlyList<string> words) => words.Count == 1 ? $"`{words[0]}`" : $"{string.Join(", ", words.SkipLast(1).Select(w => $"`{w}`"))} and `{words[^1]}`";
}
