using ClearanceCheck.Mechanics.Numbers;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>The section of a leaf spring at one place of its length, in any kind of number: where its middle is and how it stands.</summary>
/// <param name="Middle">mm.</param>
/// <param name="Along">Unit vector along the leaf, towards the eye.</param>
/// <param name="Across">Unit vector along its width.</param>
/// <param name="Up">Unit vector square to its face.</param>
internal readonly record struct LeafFrame<T>(Vector3<T> Middle, Vector3<T> Along, Vector3<T> Across, Vector3<T> Up)
    where T : unmanaged, IReal<T>;
