using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles.Checklists;

/// <summary>What a whole vehicle is expected to have.</summary>
/// <param name="Id">The word that is declared absent, behind the name of the axle or wheel body where it has one.</param>
/// <param name="For">What has it.</param>
/// <param name="Kinds">Kinds of parts that fill it.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Where">Facts of the axle that must hold; empty for every axle.</param>
public sealed record Expectation(string Id, ExpectedFor For, ImmutableArray<string> Kinds, int Count, ImmutableArray<string> Where)
{
    /// <summary>The places that it asks for, in the file's order of axles.</summary>
    public ImmutableArray<ExpectedSlot> Slots(IEnumerable<Axle> axles, IReadOnlyCollection<Absence> absent, string? drive) => For == ExpectedFor.Vehicle
        ? [new ExpectedSlot(Id, null, null)]
        : [.. axles.Where(a => IsExpectedOf(a, drive) && Where.All(AxleFacts.Of(a, absent, drive).Contains)).SelectMany(SlotsOf)];

    // A shaft that is declared absent keeps its place, with its reason; one that the drive leaves out has none.
    private bool IsExpectedOf(Axle axle, string? drive) => Id != AxleFacts.ShaftRow || DriveWords.Drives(drive, axle.Name);

    private IEnumerable<ExpectedSlot> SlotsOf(Axle axle) => For == ExpectedFor.Axle
        ? [new ExpectedSlot($"{axle.Name}-{Id}", axle.Name, null)]
        : new[] { axle.Left.Body, axle.Right.Body }.Distinct().Select(b => new ExpectedSlot($"{b.Replace("/axle", "", StringComparison.Ordinal).Replace('/', '-')}-{Id}", axle.Name, b));
}
