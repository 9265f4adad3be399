using ClearanceCheck.Files;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Rules;
using ClearanceCheck.Tests.Shared;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Inspecting.Tests;

/// <summary>Axles that move only by their bushings: whether they bind, and what holds them.</summary>
public sealed class BindingTests
{
    [Fact]
    public void Arms_rigid_on_their_axle_bind_and_the_finding_says_which_bushing_and_what_force()
    {
        Vehicle vehicle = Read("free-rigid-arms");

        Finding binds = OneLine.Inspect(vehicle).Findings.Single(f => f.Rule == "axle-binds");

        binds.Verdict.ShouldBe(Verdict.Fails);
        binds.Severity.ShouldBe(Severity.Warning);
        // The reference table's worst gives, one wheel up and one down: about 50 mm.
        binds.Evidence!.Value.ShouldBeInRange(40, 60);
        (binds.Evidence.WitnessFirst - binds.Evidence.WitnessSecond).Length.ShouldBe(binds.Evidence.Value, 1e-9);
        binds.Consequence!.ShouldContain("the arm ");
        binds.Consequence!.ShouldContain(" N (the weight of ");
        double[] pose = [.. binds.Evidence.Pose.Coordinates.Select(c => c.Value)];
        (pose[0] * pose[1]).ShouldBeLessThan(0);
        Held(vehicle, pose).ShouldBeGreaterThan(5000);
    }

    [Theory]
    [InlineData("radius-arms")]
    [InlineData("five-link")]
    public void Arms_and_links_as_they_are_built_do_not_bind(string name)
    {
        Finding binds = OneLine.Inspect(Read(name)).Findings.Single(f => f.Rule == "axle-binds");

        binds.Verdict.ShouldBe(Verdict.Conforms);
        binds.Evidence!.Value.ShouldBeInRange(0.2, 6);
    }

    [Fact]
    public void An_axle_of_exact_links_has_nothing_to_bind() =>
        OneLine.Inspect(Read("four-link")).Findings.ShouldNotContain(f => f.Rule == "axle-binds");

    private static double Held(Vehicle vehicle, double[] pose)
    {
        AxleModule module = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray()).Motion!.Modules[0];
        return LinkageLoads.Of(module.Motion.Linkage, module.Motion.At(pose).Bodies.Span, pose).Settings.Max(s => Math.Abs(s.Load));
    }

    private static Vehicle Read(string name) =>
        InspectionFileReader.Read(new InspectionFile(name, FixtureFiles.Bytes("layouts", name + ".yaml"), _ => null)).Vehicle.ShouldNotBeNull();
}
