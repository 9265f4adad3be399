using System.Text;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files.Tests;

/// <summary>What is said about faulty answers, tightening, temporary states and scope, whole, and what sound ones become.</summary>
public sealed class RecordFaultTests
{
    private const string Pedal = "  brake-pedal-hold: { is: ok, by: R.A. }\n";

    private const string Tightened = "  rear: { at: ride-height, by: R.A., mark: painted, except: [ upper-link-frame ] }";

    private static readonly InspectionVocabulary Vocabulary = new(
        [new("brake-pedal-hold", [], false), new("brakes-bled", [], false), new("headlamps-aimed", [], false), new("track-bar-bolts-tightened", ["Nm", "lb-ft"], true)],
        [new("brake-hose", ExpectedFor.WheelBody, ["brake-hose"], 1, []), new("fuel-line", ExpectedFor.Vehicle, ["fuel-line"], 1, [])]);

    public static TheoryData<string, string, string> Cases { get; } = new()
    {
        { "answer-unknown-item", Pedal, "  brake-pedal-hlod: { is: ok, by: R.A. }\n" },
        { "answer-without-by", Pedal, "  brake-pedal-hold: { is: ok }\n" },
        { "answer-other-word", Pedal, "  brake-pedal-hold: { is: okay, by: R.A. }\n" },
        { "answer-unknown-key", Pedal, "  brake-pedal-hold: { is: ok, bye: R.A. }\n" },
        { "answer-value-not-asked", Pedal, "  brake-pedal-hold: { is: ok, value: 3 mm, by: R.A. }\n" },
        { "answer-without-value", "value: 180 Nm, ", "" },
        { "answer-without-mark", "mark: painted, by: R.A. }\n  head", "by: R.A. }\n  head" },
        { "answer-value-without-unit", "value: 180 Nm", "value: 180" },
        { "answer-value-of-other-unit", "value: 180 Nm", "value: 180 mm" },
        { "tightened-unknown", "  rear: { at: ride-height", "  raer: { at: ride-height" },
        { "tightened-unknown-pivot", Tightened, "  rear-uper-link-frame: { at: ride-height, by: R.A. }" },
        { "tightened-without-at", "at: ride-height, by: R.A., mark", "by: R.A., mark" },
        { "tightened-except-unknown", "except: [ upper-link-frame ]", "except: [ uper-link-frame ]" },
        { "temporary-without-until", Tightened, "  rear: { at: ride-height, by: R.A. }\ntemporary:\n  front-shaft-out: { what: Front shaft out, must-not: No four-wheel drive, by: R.A. }" },
        { "absent-unknown", Tightened, "  rear: { at: ride-height, by: R.A. }\nabsent: { rear-brake-hoze: Drum on the shaft }" },
        { "absent-and-answered", Tightened, "  rear: { at: ride-height, by: R.A. }\nabsent: { brakes-bled: Not opened }" },
        { "fitted-unknown", "fitted: [ none ]", "fitted: [ bodylift ]" },
        { "fitted-and-none", "fitted: [ none ]", "fitted: [ none, body-lift ]" },
        { "whole-and-axles", "scope: [ rear ]", "scope: [ whole-vehicle, rear ]" },
        { "original-other-word", "    name: Rear axle tube\n", "    name: Rear axle tube\n    original: true\n" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_fault_gets_its_one_message(string name, string old, string fresh)
    {
        InspectionReading reading = Read((old, fresh));

        reading.Vehicle.ShouldBeNull();
        Golden.Matches(name, reading.Messages());
    }

    [Fact]
    public void Answers_stand_in_the_model_as_typed()
    {
        InspectorsRecord record = Read().Vehicle.ShouldNotBeNull().Record;

        record.Answers.ShouldBe(
        [
            new Answer("brake-pedal-hold", AnswerOutcome.Ok, null, null, "R.A.", null),
            new Answer("brakes-bled", AnswerOutcome.Ok, null, null, "R.A.", null),
            new Answer("track-bar-bolts-tightened", AnswerOutcome.Ok, "180 Nm", "painted", "R.A.", null),
            new Answer("headlamps-aimed", AnswerOutcome.NotDone, null, null, "R.A.", "After the alignment"),
        ]);
        record.Fitted.ShouldNotBeNull().ShouldBeEmpty();
    }

    [Fact]
    public void Tightening_of_an_axle_is_that_of_its_bushed_pivots_but_for_those_left_out()
    {
        Tightening tightening = Read().Vehicle.ShouldNotBeNull().Record.Tightened.Single();

        tightening.Pivots.ShouldBe(
            ["lower-link-left-frame", "lower-link-left-axle", "lower-link-right-frame", "lower-link-right-axle", "upper-link-axle", "track-bar-frame", "track-bar-axle"]);
        tightening.AtRideHeight.ShouldBeTrue();
    }

    [Fact]
    public void One_pivot_may_be_named_alone()
    {
        Tightening tightening = Read((Tightened, "  rear-track-bar-axle: { at: hanging, by: R.A. }")).Vehicle.ShouldNotBeNull().Record.Tightened.Single();

        tightening.Pivots.ShouldBe(["track-bar-axle"]);
        tightening.AtRideHeight.ShouldBeFalse();
    }

    [Fact]
    public void A_whole_vehicle_takes_in_every_axle()
    {
        var vehicle = Read(("scope: [ rear ]", "scope: [ whole-vehicle ]")).Vehicle.ShouldNotBeNull();

        vehicle.IsWhole.ShouldBeTrue();
        vehicle.Scope.ShouldBe(["rear"]);
    }

    [Fact]
    public void What_is_absent_and_what_is_temporary_stand_in_the_model()
    {
        InspectorsRecord record = Read((Tightened, """
              rear: { at: ride-height, by: R.A. }
            absent: { rear-brake-hose: Brake on the shaft, fuel-line: Electric }
            temporary:
              front-shaft-out: { what: Front shaft out, must-not: No four-wheel drive, until: Shaft fitted, by: R.A. }
            """)).Vehicle.ShouldNotBeNull().Record;

        record.Absent.ShouldBe([new Absence("rear-brake-hose", "Brake on the shaft"), new Absence("fuel-line", "Electric")]);
        record.Temporary.ShouldBe([new TemporaryState("front-shaft-out", "Front shaft out", "No four-wheel drive", "Shaft fitted", "R.A.")]);
    }

    [Fact]
    public void Original_parts_are_marked()
    {
        var vehicle = Read(("    name: Rear axle tube\n", "    name: Rear axle tube\n    original: yes\n")).Vehicle.ShouldNotBeNull();

        vehicle.Parts.Where(p => p.IsOriginal).Select(p => p.Id).ShouldBe(["rear-axle-tube"]);
    }

    private static InspectionReading Read(params (string Old, string New)[] changes)
    {
        string text = Encoding.UTF8.GetString(FixtureFiles.Bytes("one-line", "inspection.yaml").Span).ReplaceLineEndings("\n");
        foreach ((string old, string fresh) in changes)
        {
            text.ShouldContain(old);
            text = text.Replace(old, fresh.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        }

        return InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), file => FixtureFiles.Beside("one-line", file)) { Vocabulary = Vocabulary });
    }
}
