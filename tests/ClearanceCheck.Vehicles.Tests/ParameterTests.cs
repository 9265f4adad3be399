using ClearanceCheck.Geometry;

namespace ClearanceCheck.Vehicles.Tests;

public sealed class ParameterTests
{
    [Fact]
    public void A_half_width_becomes_a_standard_uncertainty_by_root_three()
    {
        // A value that may lie anywhere within plus or minus a has the standard deviation a / sqrt(3): 3 mm gives 1.732 mm.
        new Parameter("parts/line/path/1.x", 100, 3, false).StandardUncertaintyMm.ShouldBe(1.7320508, 1e-7);
    }

    [Theory]
    [InlineData("axles/rear/points/hub-left.x", "axles/rear/points/hub-left")]
    [InlineData("axles/rear/points/hub-left.z", "axles/rear/points/hub-left")]
    [InlineData("parts/rear-shock/open", "parts/rear-shock/open")]
    public void A_reading_is_the_path_without_its_axis(string path, string reading)
    {
        new Parameter(path, 0, 1, false).Reading.ShouldBe(reading);
    }

    [Fact]
    public void A_point_is_found_again_in_the_vector_and_shifted_alone()
    {
        var builder = new ParameterVectorBuilder();
        MeasuredLength length = builder.Length("a", 7, 1, true);
        MeasuredPoint point = builder.Point("b", new Vector3d(1, 2, 3), 2, false);

        ParameterVector vector = builder.Build();

        length.At(vector.Nominal).ShouldBe(7);
        point.At(vector.Nominal).ShouldBe(new Vector3d(1, 2, 3));
        point.At(vector.Shifted(point.Y.Index, 0.5)).ShouldBe(new Vector3d(1, 2.5, 3));
        vector.Parameters.Select(p => p.Path).ShouldBe(["a", "b.x", "b.y", "b.z"]);
        vector.Parameters[0].WithinIsAssumed.ShouldBeTrue();
        vector.Parameters[1].HalfWidthMm.ShouldBe(2);
    }
}
