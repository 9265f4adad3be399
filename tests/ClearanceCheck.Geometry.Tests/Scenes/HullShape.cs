namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>The shapes of which pairs are drawn.</summary>
public enum HullShape
{
    Capsule,
    Triangle,
    Box,
    Stave,
}
