using ClearanceCheck.Geometry;
using ClearanceCheck.Inspecting.Results;
using ClearanceCheck.Reporting.Drawings;
using ClearanceCheck.Reporting.Tests.Samples;

namespace ClearanceCheck.Reporting.Tests.Drawings;

public sealed class SilhouetteTests
{
    [Fact]
    public void A_box_seen_over_an_edge_is_as_wide_as_its_diagonal()
    {
        // Length 100 along y; the section of 30 by 40 turned so that its diagonal of 50 lies across the page.
        DrawnPart box = SampleShapes.Box(Vector3d.Zero, new Vector3d(18, 0, 24), new Vector3d(0, 100, 0), new Vector3d(32, 0, -24));

        SilhouettePiece seen = Silhouette.Of(box, p => new PagePoint(p.X, p.Y), 1).Pieces.ShouldHaveSingleItem();

        seen.Hull.ShouldBe([new(0, 0), new(50, 0), new(50, 100), new(0, 100)]);
    }

    [Fact]
    public void Room_is_measured_to_the_rounded_edge_and_is_negative_on_the_part()
    {
        Silhouette plate = Silhouette.Of(SampleShapes.Plate(Vector3d.Zero, 40, 20), p => new PagePoint(p.X, p.Y), 2);

        plate.RoomBeside(new PagePoint(50, 0)).ShouldBe(10 - 3, 1e-9);
        plate.RoomBeside(new PagePoint(43, 24)).ShouldBe(5 - 3, 1e-9);
        plate.RoomBeside(new PagePoint(30, 18)).ShouldBe(-2 - 3, 1e-9);
    }

    [Fact]
    public void A_chain_and_pieces_of_one_part_are_both_measured_to()
    {
        DrawnPart part = SampleShapes.Plate(Vector3d.Zero, 40, 20) with { Points = [new Vector3d(0, 60, 0), new Vector3d(9, 60, 0)], RadiusMm = 4 };

        Silhouette both = Silhouette.Of(part, p => new PagePoint(p.X, p.Y), 1);

        both.RoomBeside(new PagePoint(0, 70)).ShouldBe(6, 1e-9);
        both.RoomBeside(new PagePoint(-50, 0)).ShouldBe(8.5, 1e-9);
    }

    [Fact]
    public void A_balls_triangles_cover_a_disc_that_is_nearly_round()
    {
        Silhouette ball = Silhouette.Of(SampleShapes.Lump(Vector3d.Zero, 40), p => new PagePoint(p.X, p.Z), 1);
        // Eight rings and sixteen turns: flat sides lie at most 1 - cos(360 deg / 32) inside the ball.
        double inside = 40 * (1 - Math.Cos(Math.PI / 16)) + 0.01;

        for (int i = 0; i < 97; i++)
        {
            (double s, double c) = Math.SinCos(2 * Math.PI * i / 97);
            ball.RoomBeside(new PagePoint(c * 40, s * 40)).ShouldBeInRange(-1e-9, inside);
            ball.RoomBeside(new PagePoint(c * (40 - inside), s * (40 - inside))).ShouldBeLessThanOrEqualTo(1e-9);
        }
    }

    [Fact]
    public void A_piece_that_lies_wholly_on_another_is_left_out_and_one_that_sticks_out_by_its_radius_is_not()
    {
        DrawnPiece large = new([new Vector3d(0, 0, 0), new Vector3d(60, 0, 0), new Vector3d(60, 40, 0), new Vector3d(0, 40, 0)], 0);
        DrawnPiece within = new([new Vector3d(10, 10, 9), new Vector3d(50, 30, 9)], 9);
        DrawnPart part = new("x", [], 0, false) { Pieces = [within, large, large, new DrawnPiece([new Vector3d(10, 5, 9), new Vector3d(20, 5, 9)], 5.1)] };

        Silhouette seen = Silhouette.Of(part, p => new PagePoint(p.X, p.Y), 1).Within(100, 100, 0);

        seen.Pieces.Select(p => p.Radius).Order().ShouldBe([0, 5.1]);
    }

    [Fact]
    public void Pieces_that_the_window_does_not_show_are_left_out()
    {
        Silhouette two = Silhouette.Of(
            new DrawnPart("x", [], 0, false) { Pieces = [new DrawnPiece([new Vector3d(-30, 10, 0)], 25), new DrawnPiece([new Vector3d(-31, 10, 0)], 25), new DrawnPiece([], 3)] },
            p => new PagePoint(p.X, p.Y), 1);

        two.Within(100, 100, 5).Pieces.ShouldHaveSingleItem().Hull.ShouldBe([new(-30, 10)]);
    }
}
