namespace ClearanceCheck.Vehicles.Tires;

/// <summary>What is wrong with a text that should be a tire size.</summary>
public enum TireSizeFault
{
    /// <summary>Nothing: it is a size.</summary>
    None,

    /// <summary>It has neither the form of <c>285/75R16</c> nor that of <c>35x12.50R17LT</c>.</summary>
    Form,

    /// <summary>No tire has that section width.</summary>
    SectionWidth,

    /// <summary>No tire is that high for its width.</summary>
    AspectRatio,

    /// <summary>No rim has that diameter, or the tire would not reach around it.</summary>
    RimDiameter,

    /// <summary>No tire for a road vehicle has that overall diameter.</summary>
    OverallDiameter,
}
