using System.Collections.Immutable;
using ClearanceCheck.Geometry;
using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The path of a body's point as another body sees it, in any kind of number, written so that what cancels is never computed.</summary>
internal static class RelativePath
{
    public static Vector3<Taylor2<T>> Of<T>(ImmutableArray<Follower> followers, ReadOnlySpan<MotionJet<T>> jets, int frameBody, int body, Vector3d point)
        where T : unmanaged, IReal<T>
    {
        if (frameBody == body) return Vector3<Taylor2<T>>.From(point);
        if (frameBody == 0) return jets[body].Apply(point);
        int first = jets.Length - followers.Length;
        Follower? frame = frameBody < first ? null : followers[frameBody - first], own = body < first ? null : followers[body - first];
        if (frame is LineFollower tube && own is LineFollower rod && AreEndToEnd(tube, rod)) return Vector3<Taylor2<T>>.From(point) + LineJet.Extension(tube, jets);
        if (own is LineFollower line && line.FirstBody == frameBody) return jets[body].ApplyInFrameAbout(jets[frameBody], line.FirstPoint, point);
        if (frame is LineFollower held && held.FirstBody == body) return jets[body].ApplyInFrameAbout(jets[frameBody], held.FirstPoint, point);
        if (own is LeafPiece piece && piece.Leaf.SeatBody == frameBody) return piece.InSeat(jets).Apply(point);
        if (frame is LeafPiece seated && seated.Leaf.SeatBody == body) return MotionJet<T>.Still.ApplyInFrame(seated.InSeat(jets), point);
        return jets[body].ApplyInFrame(jets[frameBody], point);
    }

    // Tube and rod of one shock: both turn alike, so that one slides on the other.
    private static bool AreEndToEnd(LineFollower a, LineFollower b) =>
        a.FirstBody == b.SecondBody && a.SecondBody == b.FirstBody && a.FirstPoint == b.SecondPoint && a.SecondPoint == b.FirstPoint;
}
