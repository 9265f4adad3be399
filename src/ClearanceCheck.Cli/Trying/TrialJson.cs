using System.Text.Json;
using ClearanceCheck.Cli.Outputs;
using ClearanceCheck.Inspecting.Trying;
using ClearanceCheck.Reporting.Wording;
using ClearanceCheck.Rules;

namespace ClearanceCheck.Cli.Trying;

/// <summary>A trial of rules as machine output; its schema is <c>try</c>.</summary>
internal static class TrialJson
{
    private const int Format = 1;

    public static string Write(RuleTrial trial, RuleLibrary library) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("format", Format);
        json.WriteString("rules", $"{library.Name} {library.Version}");
        JsonText.Texts(json, "notLoaded", library.NotLoaded);
        json.WriteString("before", MachineWords.Of(trial.Before));
        json.WriteString("after", MachineWords.Of(trial.After));
        json.WriteNumber("alike", trial.Alike);
        json.WriteStartArray("flips");
        foreach (Flip flip in trial.Flips) Write(json, flip);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter json, Flip flip)
    {
        json.WriteStartObject();
        json.WriteString("kind", TrialWords.Of(flip.Kind));
        json.WriteString("id", flip.Id);
        json.WriteString("title", flip.Title);
        Judged(json, "before", flip.Before);
        Judged(json, "after", flip.After);
        json.WriteEndObject();
    }

    private static void Judged(Utf8JsonWriter json, string name, JudgedAs? judged)
    {
        if (judged is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("severity", MachineWords.Of(judged.Severity));
        json.WriteString("outcome", TrialWords.Outcome(judged));
        json.WriteBoolean("accepted", judged.IsAccepted);
        json.WriteEndObject();
    }
}
