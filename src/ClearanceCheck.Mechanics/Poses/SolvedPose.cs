using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Poses;

/// <summary>Where every body is in one pose: body 0 is the chassis and stands still. Empty when not solved.</summary>
public sealed record SolvedPose(PoseAnswerKind Answer, ReadOnlyMemory<RigidMotion> Bodies)
{
    public bool IsSolved => Answer == PoseAnswerKind.Solved;

    public RigidMotion this[int body] => Bodies.Span[body];

    /// <summary>The pose of one body in another's frame.</summary>
    public RigidMotion Relative(int frameBody, int body) =>
        frameBody == body ? RigidMotion.Identity
        : frameBody == 0 ? this[body]
        : this[frameBody].Inverse * this[body];
}
