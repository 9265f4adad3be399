using ClearanceCheck.Geometry;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Mechanics.Poses;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files.Tests.Layouts;

/// <summary>The packs of an axle on leaf springs as parts of the file.</summary>
public sealed class LeafSpringPartTests
{
    [Fact]
    public void The_sizes_make_one_spring_a_side_between_the_points_of_the_layout()
    {
        LayoutExample example = LayoutExample.Of("leaf-spring-packs");
        ReadOnlySpan<double> values = example.Vehicle.Parameters.Nominal;
        foreach ((string side, double y) in (ReadOnlySpan<(string, double)>)[("left", 520), ("right", -520)])
        {
            Part part = example.Vehicle.Parts.Single(p => p.Id == $"rear-{side}-leaf-spring");
            var form = (PartForm.LeafSpring)part.Form;

            part.Kind.Id.ShouldBe("leaf-spring");
            part.Name.ShouldBe($"Rear {side} leaf spring");
            part.Body.ShouldBe("rear/axle");
            part.Form.Ends.Select(e => e.Body).ShouldBe(["chassis", "rear/axle", $"rear/shackle-{side}"]);
            form.Seat.At.At(values).ShouldBe(new Vector3d(-608, y, -275));
            (form.Width.At(values), form.Thickness.At(values), form.Stack.At(values), form.Clamp.At(values)).ShouldBe((63, 8, 42, 110));
            example.Motion.CarriersOf(part).Length.ShouldBe(13);
        }
    }

    [Fact]
    public void Its_pieces_meet_each_other_and_both_eyes_through_the_travel()
    {
        LayoutExample example = LayoutExample.Of("leaf-spring-packs");
        Part part = example.Vehicle.Parts.Single(p => p.Id == "rear-left-leaf-spring");
        var form = (PartForm.LeafSpring)part.Form;
        var pieces = LeafPieces.Of(part, example.Vehicle.Parameters.Nominal, body => example.Motion.Find(body).Number);
        foreach (double[] at in (double[][])[[-70, -70], [60, 60], [60, -70], [-70, 60]])
        {
            SolvedPose pose = example.Solve(at);
            for (int i = 0; i < pieces.Length; i++)
            {
                Vector3d end = End(i, 1);
                if (i % 6 == 5)
                {
                    Place eye = i == 5 ? form.FixedEye : form.ShackleEye;
                    (end - pose[example.Motion.Find(eye.Body).Number].Apply(eye.At.At(example.Vehicle.Parameters.Nominal))).Length.ShouldBeLessThan(2.5);
                }
                else
                {
                    (end - End(i + 1, -1)).Length.ShouldBeLessThan(2.5);
                }
            }

            Vector3d End(int piece, int way)
            {
                (Vector3d middle, Vector3d along, _, _) = pieces[piece].Measured;
                Joint.Leaf leaf = pieces[piece].Leaf;
                double length = LeafShape.LengthMm(Math.Abs(Vector3d.Dot(leaf.Eye - leaf.Clamp, leaf.Along)), (leaf.Eye - leaf.Clamp - (leaf.Along * Vector3d.Dot(leaf.Eye - leaf.Clamp, leaf.Along))).Length) / 12;
                return pose[example.Module.Bodies.IndexOf(pieces[piece].Name)].Apply(middle + (along * (way * length)));
            }
        }
    }

    [Fact]
    public void Without_sizes_there_is_no_spring_to_check() =>
        LayoutExample.Of("leaf-springs").Vehicle.Parts.ShouldNotContain(p => p.Form is PartForm.LeafSpring);
}
