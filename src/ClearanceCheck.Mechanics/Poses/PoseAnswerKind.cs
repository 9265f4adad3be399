namespace ClearanceCheck.Mechanics.Poses;

/// <summary>What can be said of a pose. A stop that is passed is a fourth answer, asked for apart: the bodies' places are known there.</summary>
public enum PoseAnswerKind
{
    /// <summary>All equations are met.</summary>
    Solved,

    /// <summary>Proved: no place of the bodies meets the equations.</summary>
    Unreachable,

    /// <summary>The solver found no solution and no proof that there is none. Never read as "cannot be reached".</summary>
    NotSolved,
}
