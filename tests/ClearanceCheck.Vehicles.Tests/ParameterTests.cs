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

    [Fact]
    public void A_mirror_image_lies_across_the_centre_plane_and_beside_that_by_its_own_deviation()
    {
        var builder = new ParameterVectorBuilder();
        MeasuredPoint source = builder.Point("left", new Vector3d(1, 2, 3), 2, false);
        MeasuredPoint image = source.Mirrored(builder.Point("right", new Vector3d(0.1, 0.2, 0.4), 6, true));
        ParameterVector vector = builder.Build();

        image.At(vector.Nominal).ShouldBe(new Vector3d(1.1, -1.8, 3.4));
        image.At(vector.Shifted(source.Y.Index, 10)).ShouldBe(new Vector3d(1.1, -11.8, 3.4));
        image.At(vector.Shifted(source.X.Index, 10)).ShouldBe(new Vector3d(11.1, -1.8, 3.4));
        image.At(vector.Shifted(image.Y.OwnIndex, 10)).ShouldBe(new Vector3d(1.1, 8.2, 3.4));
        image.Indices.Order().ShouldBe([0, 1, 2, 3, 4, 5]);
        (source.IsMirrored, image.IsMirrored).ShouldBe((false, true));
        image.Mirrored(builder.Point("again", Vector3d.Zero, 1, false)).Y.IsNegated.ShouldBeFalse();
    }
}
