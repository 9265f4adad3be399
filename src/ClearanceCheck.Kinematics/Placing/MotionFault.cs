using ClearanceCheck.Mechanics.Linkages;

namespace ClearanceCheck.Kinematics.Placing;

/// <summary>Why an axle could not be set in motion. A closed family.</summary>
public abstract record MotionFault
{
    private protected MotionFault()
    {
    }

    /// <summary>Its links and joints don't make it move.</summary>
    /// <param name="Fault">What is wrong with them.</param>
    public sealed record Links(LinkageFault Fault) : MotionFault;

    /// <summary>Its links don't let it stand as it was measured in a state.</summary>
    /// <param name="State">The state's name.</param>
    /// <param name="LeftTravelMm">Travel of the left wheel there, from the readings, mm, bump positive.</param>
    /// <param name="RightTravelMm">Travel of the right wheel there.</param>
    public sealed record StateOutOfReach(string State, double LeftTravelMm, double RightTravelMm) : MotionFault;
}
