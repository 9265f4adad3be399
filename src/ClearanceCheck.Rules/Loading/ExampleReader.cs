using System.Collections.Immutable;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Quantities;

namespace ClearanceCheck.Rules.Loading;

/// <summary>Reads the examples that a rule states about itself.</summary>
internal sealed class ExampleReader(Quantity quantity)
{
    private static readonly Dictionary<string, ExampleOutcome> Outcomes = new(StringComparer.Ordinal)
    {
        ["conforms"] = ExampleOutcome.Conforms,
        ["fails"] = ExampleOutcome.Fails,
        ["undecided"] = ExampleOutcome.Undecided,
        ["not-covered"] = ExampleOutcome.NotCovered,
        ["not-evaluated"] = ExampleOutcome.NotEvaluated,
    };

    /// <summary>The word of an outcome in rule files.</summary>
    public static string Word(ExampleOutcome outcome) => Outcomes.First(o => o.Value == outcome).Key;

    /// <summary>The examples in file order; none when absent, null when any is faulty.</summary>
    public IReadOnlyList<RuleExample>? Read(Field field) =>
        field.IsPresent ? field.List(item => item.Mapping(Read))?.Value : [];

    private RuleExample? Read(MappingReader reader)
    {
        double? value = ValueReader.Read(reader.Required("value", "the value found, with its unit"), quantity);
        Field uncertaintyField = reader.Optional("uncertainty"), partField = reader.Optional("part"), toField = reader.Optional("to");
        double? uncertainty = uncertaintyField.IsPresent ? ValueReader.Read(uncertaintyField, quantity) : 0;
        ImmutableArray<string>? facts = WordsReader.Read(reader.Optional("facts"), RuleFacts.All);
        ExamplePart? part = SelectorReader.ReadExample(partField), to = SelectorReader.ReadExample(toField);
        Placed<ExampleOutcome>? expect = reader.Required("expect", "what the rule makes of it: " + string.Join(", ", Outcomes.Keys)).Choice(Outcomes);
        bool isFaulty = (partField.IsPresent && part is null) || (toField.IsPresent && to is null);
        if (toField.IsPresent && !quantity.IsOfPair)
        {
            RuleMessages.ToWithoutPair(toField, quantity);
            isFaulty = true;
        }

        if (uncertainty < 0)
        {
            RuleMessages.NegativeUncertainty(uncertaintyField);
            isFaulty = true;
        }

        if (isFaulty || value is null || uncertainty is null || facts is null || expect is null) return null;
        return new RuleExample(value.Value, uncertainty.Value, facts.Value, part, to, expect.Value);
    }
}
