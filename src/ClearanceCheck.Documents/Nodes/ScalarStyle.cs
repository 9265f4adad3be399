namespace ClearanceCheck.Documents.Nodes;

/// <summary>How a value was written.</summary>
public enum ScalarStyle
{
    /// <summary>Without quotes.</summary>
    Plain,

    /// <summary>In single or double quotes.</summary>
    Quoted,

    /// <summary>As a block of lines below <c>|</c> or <c>&gt;</c>.</summary>
    Block,
}
