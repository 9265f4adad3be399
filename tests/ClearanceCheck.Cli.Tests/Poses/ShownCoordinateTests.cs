using ClearanceCheck.Cli.Poses;
using ClearanceCheck.Mechanics.Poses;

namespace ClearanceCheck.Cli.Tests.Poses;

public sealed class ShownCoordinateTests
{
    [Fact]
    public void Travel_is_shown_in_mm_and_an_angle_in_degrees()
    {
        ShownCoordinate.Of(new PoseCoordinate("rear.left", false, -100, 100), 12.5).ShouldBe(new ShownCoordinate("rear.left", 12.5, "mm"));
        ShownCoordinate angle = ShownCoordinate.Of(new PoseCoordinate("front.steer", true, -1, 1), Math.PI / 6);
        angle.Value.ShouldBe(30, 1e-12);
        angle.Unit.ShouldBe("deg");
    }
}
