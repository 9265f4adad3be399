namespace ClearanceCheck.Cli.Tests;

/// <summary>A rule library of one rule.</summary>
internal static class ShopRules
{
    public static string Write(string id, string atLeast, string severity) => $$"""
        format: 1
        library: test-shop
        version: 1.0.0

        rules:
          {{id}}:
            title: Line near the exhaust
            severity: {{severity}}
            consequence: The line gets hot.
            quantity: gap
            part: { kind: [ brake-line ] }
            to: { group: [ hot-exhaust ] }
            over: all-poses
            limit: { at-least: {{atLeast}} }
            source:
              basis: shop
              known: none
              text: "A test's own."
            advice: Move it.
            hand-check: Measure it cold.
            recheck: [ gap ]
            examples:
              - { value: 0.9 mm, part: { kind: brake-line }, to: { kind: exhaust-pipe }, expect: fails }
              - { value: 501 mm, part: { kind: brake-line }, to: { kind: exhaust-pipe }, expect: conforms }

        """;
}
