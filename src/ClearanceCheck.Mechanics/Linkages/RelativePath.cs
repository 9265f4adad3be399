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
        if (frame is not null && own is not null && AreEndToEnd(frame, own))
            return Vector3<Taylor2<T>>.From(point) + FollowerJet.Extension(frame, jets);
        if (own is not null && own.FirstBody == frameBody) return jets[body].ApplyInFrameAbout(jets[frameBody], own.FirstPoint, point);
        if (frame is not null && frame.FirstBody == body) return jets[body].ApplyInFrameAbout(jets[frameBody], frame.FirstPoint, point);
        return jets[body].ApplyInFrame(jets[frameBody], point);
    }

    // Tube and rod of one shock: both turn alike, so that one slides on the other.
    private static bool AreEndToEnd(Follower a, Follower b) =>
        a.FirstBody == b.SecondBody && a.SecondBody == b.FirstBody && a.FirstPoint == b.SecondPoint && a.SecondPoint == b.FirstPoint;
}
