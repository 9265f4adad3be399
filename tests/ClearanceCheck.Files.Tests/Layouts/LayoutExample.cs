using System.Text;
using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests.Layouts;

/// <summary>An inspection under <c>Inspections/Layouts</c>, read and set in motion.</summary>
internal sealed class LayoutExample
{
    private LayoutExample(Vehicle vehicle, VehicleMotion motion) => (Vehicle, Motion) = (vehicle, motion);

    public static string[] Names { get; } =
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Inspections", "Layouts"), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    public Vehicle Vehicle { get; }

    public VehicleMotion Motion { get; }

    public Axle Axle => Vehicle.Axles[0];

    public AxleModule Module => Motion.Modules[0];

    /// <summary>Reads an example that has to be right.</summary>
    public static LayoutExample Of(string name)
    {
        InspectionReading reading = Read(name);
        reading.Messages().ShouldBe("");
        Vehicle vehicle = reading.Vehicle.ShouldNotBeNull();
        (VehicleMotion? motion, string? axle, _) = VehicleMotion.Build(vehicle, vehicle.Parameters.Nominal.ToArray());
        axle.ShouldBeNull(name);
        return new LayoutExample(vehicle, motion!);
    }

    /// <summary>Reads an example with some of its text exchanged.</summary>
    public static InspectionReading Read(string name, params (string Old, string New)[] changes)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Inspections", "Layouts", name + ".yaml")).ReplaceLineEndings("\n");
        foreach ((string old, string fresh) in changes)
        {
            text.ShouldContain(old);
            text = text.Replace(old, fresh, StringComparison.Ordinal);
        }

        return InspectionFileReader.Read(new InspectionFile("inspection.yaml", Encoding.UTF8.GetBytes(text), _ => null));
    }

    /// <summary>A pose that has to be solved.</summary>
    public SolvedPose Solve(params double[] at)
    {
        SolvedPose pose = Module.Motion.At(at);
        pose.Answer.ShouldBe(PoseAnswerKind.Solved, string.Join(", ", at));
        return pose;
    }

    /// <summary>Where a body's place is in a pose.</summary>
    public Vector3d At(SolvedPose pose, string body, Vector3d place) => pose[Number(body)].Apply(place);

    /// <summary>A measured point.</summary>
    public Vector3d Measured(string point) => Axle.Points[point].At(Vehicle.Parameters.Nominal);

    // A body of the axle, or what follows a part's two ends.
    private int Number(string body) => Math.Max(Module.Bodies.IndexOf($"{Axle.Name}/{body}"), Module.Bodies.IndexOf(body)) is > 0 and var number ? number : throw new ArgumentException(body);
}
