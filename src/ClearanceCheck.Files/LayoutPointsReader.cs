using System.Collections.Immutable;
using ClearanceCheck.Documents.Nodes;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Axles;
using ClearanceCheck.Files.Mirroring;
using ClearanceCheck.Files.States;
using ClearanceCheck.Kinematics;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Steerings;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Files;

/// <summary>Reads the points of a layout: <c>points: { hanging: { hub-left: [x, y, z], ... } }</c>; the model is made of one state, others are compared with it.</summary>
internal sealed class LayoutPointsReader(AxleLayout layout, Field steeringField, Field barField, string axle, double? within, Mirror? mirror, VehicleDraft draft)
{
    // Where the steering is faulty its kind may still say which points belong to it.
    private readonly SteeringLinkage? steering = SteeringReader.LinkageOf(steeringField, layout);
    private readonly ImmutableArray<LayoutPoint> needed =
        [.. layout.Points, .. SteeringReader.LinkageOf(steeringField, layout)?.Points(layout) ?? [], .. AntiRollBarReader.BarOf(barField, layout) is { } bar ? AntiRollBars.Points(layout, bar) : []];

    private const int LeastPositions = 3;
    private readonly List<(Field At, string Name)> wrongSide = [];
    private readonly Within joint = Within.For(within, draft.FileWithin, Defaults.JointCentreMm, "a hidden joint centre");

    public AxleGeometry? Read(MappingReader reader, Placed<string>? measuredIn) =>
        reader.Required("points", "the points the layout hangs on, by the state they were measured in").Mapping(states => ReadStates(states, measuredIn));

    private AxleGeometry? ReadStates(MappingReader states, Placed<string>? measuredIn)
    {
        ImmutableArray<string> typed = [.. draft.States.ByName.Keys.Where(states.Has)];
        string state = measuredIn?.Value ?? (typed.Length == 1 ? typed[0] : draft.States.MeasuredIn);
        if (measuredIn is null && typed.Length > 1 && !typed.Contains(state))
        {
            FileMessages.WhichState(states, axle, typed);
            return null;
        }

        typed = typed.Remove(state);
        if (layout.Id == Axle.GuidedLayout && typed.Length < LeastPositions - 1) FileMessages.TooFewPositions(states, axle, typed.Length + 1);
        AxleGeometry? geometry = states.Required(state, $"the points as measured in the state {state}").Mapping(points => ReadPoints(points, state, states, typed));
        ImmutableArray<ComparedPoint> compared = [.. typed.SelectMany(other => ReadCompared(states.Optional(other), other))];
        if (wrongSide.Count > 0) FileMessages.WrongSide(wrongSide);
        return geometry is null ? null : geometry with { ComparedPoints = compared };
    }

    private AxleGeometry? ReadPoints(MappingReader points, string state, MappingReader states, ImmutableArray<string> others)
    {
        var read = ImmutableSortedDictionary.CreateBuilder<string, MeasuredPoint>(StringComparer.Ordinal);
        var elsewhere = new List<(string Key, string State, ScalarNode At)>();
        List<ScalarNode> sided = SideInName(points);
        // Nobody knows which points a steering of no kind has, or a bar of no state.
        if ((steeringField.IsPresent && steering is null) || AntiRollBarReader.IsUnclear(barField)) points.AllowAll();
        // The points of a bar that is not connected may stay in the file.
        if (barField.IsPresent && AntiRollBarReader.BarOf(barField, layout) is null)
            foreach (LayoutPoint idle in AntiRollBars.Points(layout, new AntiRollBar(false))) points.Allow(idle.Name, KeyOf(idle));
        HashSet<string> unmirrored = Unmirrored(points);
        foreach (LayoutPoint point in needed.Where(p => !IsImage(p, points)))
        {
            string key = KeyOf(point);
            if (unmirrored.Contains(Mirror.Bare(point.Name)))
            {
                points.Allow(point.Name);
                continue;
            }

            if (sided.Exists(s => s.Text == point.Name)) points.Allow(key, point.Name);
            else if (points.Node.Find(key) is null && Elsewhere(key, states, others) is { } other)
            {
                points.Allow(key);
                elsewhere.Add(other);
            }
            else if (ReadPoint(points.Required(key, point.Where), point.Name) is { } at)
            {
                read[point.Name] = draft.Point(PathOf(point.Name), at, joint);
            }
        }

        if (sided.Count > 0) FileMessages.SideInName(draft.Diagnostics, mirror!, sided);
        if (elsewhere.Count > 0) FileMessages.MixedStates(draft.Diagnostics, axle, state, elsewhere);
        AddImages(points, read);
        if (read.Count < needed.Length || !LineEnds.AreApart(axle, read, draft)) return null;
        return new AxleGeometry { Points = read.ToImmutable(), MeasuredIn = state, IsSolid = layout.IsSolid, Left = Wheel(true), Right = Wheel(false) };

        (string, MeasuredPoint) Wheel(bool left) => (layout.WheelBody(axle, steering is not null, left), read[$"hub-{AxleLayout.Side(left)}"]);
    }

    // Steering points that are typed without their word for the side, as if they could be mirrored: one fault for both sides.
    private HashSet<string> Unmirrored(MappingReader points)
    {
        var found = new HashSet<string>(StringComparer.Ordinal);
        if (mirror is null) return found;
        foreach (LayoutPoint point in needed.Where(p => !p.IsMirrorable && Mirror.SideOf(p.Name) == "left"))
        {
            string bare = Mirror.Bare(point.Name);
            if (needed.Any(p => p.Name == bare) || points.Node.Find(bare)?.Key is not { } typed) continue;
            FileMessages.NotMirrored(draft.Diagnostics, mirror, typed, point.Name, Mirror.Swapped(point.Name)!);
            points.Allow(bare);
            found.Add(bare);
        }

        return found;
    }

    private void AddImages(MappingReader points, ImmutableSortedDictionary<string, MeasuredPoint>.Builder read)
    {
        if (mirror is null) return;
        foreach (LayoutPoint point in needed.Where(p => IsImage(p, points)))
            if (read.TryGetValue(Mirror.Swapped(point.Name)!, out MeasuredPoint source)) read[point.Name] = mirror.Of(source, PathOf(point.Name), draft);
        draft.Assume($"axles/{axle}/mirror", mirror.Sentence($"The points of the {mirror.Other} side of the {axle} axle that are not typed are"));
    }

    // What is compared elsewhere moves an axle that goes where it was seen: there each position needs all of its points.
    private bool IsPosition(LayoutPoint point) => layout.Id == Axle.GuidedLayout && layout.Points.Contains(point);

    private List<ComparedPoint> ReadCompared(Field field, string state)
    {
        List<ComparedPoint>? read = field.Mapping(points =>
        {
            var compared = new List<ComparedPoint>();
            foreach (LayoutPoint point in needed.Where(p => !IsImage(p, points)))
                if (ReadPoint(IsPosition(point) ? points.Required(KeyOf(point), point.Where) : points.Optional(KeyOf(point)), point.Name) is { } at)
                    compared.Add(new ComparedPoint(point.Name, state, draft.Point($"{PathOf(point.Name)}/in/{state}", at, joint)));
            return compared;
        });
        return read is { Count: > 0 } && AxleTies.IsTied(axle, state, field.Node!.Heading, draft) ? read : [];
    }

    private Placed<LengthTriple>? ReadPoint(Field field, string name)
    {
        if (field.Triple() is not { } at) return null;
        if (IsOnOtherSide(name, at.Value)) wrongSide.Add((field, name));
        return at;
    }

    // With a mirror the measured side's points are typed without their word for the side; a point that was measured on the other side too has its own name.
    private string KeyOf(LayoutPoint point) => mirror is not null && point.IsMirrorable && Mirror.SideOf(point.Name) == mirror.Side ? Mirror.Bare(point.Name) : point.Name;

    // Names with the word for the measured side where the name without it is missing.
    private List<ScalarNode> SideInName(MappingReader points) =>
    [
        .. needed.Where(point => KeyOf(point) != point.Name && points.Node.Find(KeyOf(point)) is null)
            .Select(point => points.Node.Find(point.Name)?.Key).OfType<ScalarNode>(),
    ];

    private bool IsImage(LayoutPoint point, MappingReader points) =>
        mirror is not null && point.IsMirrorable && Mirror.SideOf(point.Name) == mirror.Other && !points.Has(point.Name);

    private string PathOf(string point) => $"axles/{axle}/points/{point}";

    private static (string Key, string State, ScalarNode At)? Elsewhere(string key, MappingReader states, ImmutableArray<string> others)
    {
        foreach (string other in others)
            if (states.Node.Find(other)?.Value is MappingNode points && points.Find(key) is { } entry) return (key, other, entry.Key);
        return null;
    }

    private static bool IsOnOtherSide(string name, LengthTriple at)
    {
        // Of the left wheel, not on the left: a split beam may pivot beyond the middle.
        if (name.Contains("-of-", StringComparison.Ordinal)) return false;
        double y = at.Y.Length.Millimetres;
        return (name.Contains("left", StringComparison.Ordinal) && y < 0) || (name.Contains("right", StringComparison.Ordinal) && y > 0);
    }
}
