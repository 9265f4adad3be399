using System.Collections.Immutable;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Files.Mirroring;
using ClearanceCheck.Files.States;
using ClearanceCheck.Files.Wheels;
using ClearanceCheck.Geometry;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles;
using ClearanceCheck.Vehicles.Checklists;

namespace ClearanceCheck.Files;

/// <summary>The model while it is being read: what is known so far and where it stands.</summary>
internal sealed class VehicleDraft(InspectionFile file)
{
    private readonly ImmutableSortedDictionary<string, SourceSpan>.Builder places = ImmutableSortedDictionary.CreateBuilder<string, SourceSpan>(StringComparer.Ordinal);
    private readonly List<TypedReading> readings = [];
    private int parameters;

    public InspectionFile File => file;

    public DiagnosticBag Diagnostics { get; } = new();

    public ParameterVectorBuilder Parameters { get; } = new();

    public List<ModelAssumption> Assumptions { get; } = [];

    public List<string> FilesBeside { get; } = [];

    /// <summary>Half-width for all points and tape readings of the file, mm; null when the file says none.</summary>
    public double? FileWithin { get; set; }

    public VehicleDescription? Description { get; set; }

    public MeasuringStates States { get; set; } = MeasuringStates.None;

    public List<Axle> Axles { get; } = [];

    /// <summary>Bodies that parts may be fixed to.</summary>
    public List<string> Bodies { get; } = [Vehicle.Chassis, .. FixedBodies.All];

    /// <summary>Names of axles with a fault, whose bodies are not known.</summary>
    public List<string> FaultyAxles { get; } = [];

    /// <summary>State and corner of hub-to-fender readings that were said to be missing.</summary>
    public HashSet<(string State, string Corner)> Untied { get; } = [];

    /// <summary>Points of parts that were measured in another state than their axle's layout.</summary>
    public List<StatedPoint> StatedPoints { get; } = [];

    /// <summary>Parts that were typed with a side.</summary>
    public PartSides Sides { get; } = new();

    public RailPitch? RailPitch { get; set; }

    public ImmutableSortedDictionary<string, MeasuredLength> BeforeLift { get; set; } = ImmutableSortedDictionary<string, MeasuredLength>.Empty;

    public ImmutableSortedDictionary<string, OriginalTravel> OriginalTravels { get; set; } = ImmutableSortedDictionary<string, OriginalTravel>.Empty;

    public ImmutableSortedDictionary<string, RollingChange> RollingChanges { get; set; } = ImmutableSortedDictionary<string, RollingChange>.Empty;

    /// <summary>Wheels as typed, by axle.</summary>
    public SortedDictionary<string, WheelDescription> Tires { get; } = new(StringComparer.Ordinal);

    public List<DirectGap> DirectGaps { get; } = [];

    public List<HandCheck> HandChecks { get; } = [];

    public List<AcceptedFinding> Accepted { get; } = [];

    /// <summary>Ids of parts, and names of bodies, that gaps were read between: such parts need no shape.</summary>
    public HashSet<string> NamedByGaps { get; } = new(StringComparer.Ordinal);

    public ImmutableArray<string> Scope { get; set; } = [];

    /// <summary>True when the whole vehicle is in scope.</summary>
    public bool IsWhole { get; set; }

    public InspectorsRecord Record { get; set; } = InspectorsRecord.Empty;

    public List<Part> Parts { get; } = [];

    /// <summary>Ids of parts that come from an axle: the axle's name by the part's id, whether or not the axle could be read.</summary>
    public Dictionary<string, string> FromAxles { get; } = new(StringComparer.Ordinal);

    public ImmutableSortedDictionary<string, SourceSpan> Places => places.ToImmutable();

    public Vehicle Build() => new()
    {
        Description = Description!,
        Scope = Scope,
        IsWhole = IsWhole,
        Record = Record,
        Parameters = Parameters.Build(),
        Axles = [.. Axles.Select(a => a with { OtherStates = a.OtherStates.RemoveRange(a.OtherStates.Keys.Where(s => !IsUsed(a, s))) })],
        Parts = [.. Parts],
        FixedBodies = FixedBodies.All,
        States = [.. States.ByName.Values.Select(s => s.State)],
        StatedPoints = [.. StatedPoints],
        RailPitch = RailPitch,
        BeforeLift = BeforeLift,
        OriginalTravels = OriginalTravels,
        RollingChanges = RollingChanges,
        DirectGaps = [.. DirectGaps],
        HandChecks = [.. HandChecks],
        Accepted = [.. Accepted],
        Assumptions = [.. Assumptions],
        Readings = [.. readings],
    };

    public void Remember(string path, SourceSpan span) => places[path] = span;

    /// <summary>Lists something that nobody typed.</summary>
    public void Assume(string path, string text) => Assumptions.Add(new ModelAssumption(path, text));

    /// <summary>Where a point of the model lies as measured.</summary>
    public Vector3d At(MeasuredPoint point) => point.At(Parameters.Build().Nominal);

    /// <summary>Takes a point into the parameter vector.</summary>
    /// <param name="path">Its path in the model.</param>
    /// <param name="typed">The point as read.</param>
    /// <param name="within">The half-width that applies.</param>
    public MeasuredPoint Point(string path, Placed<LengthTriple> typed, Within within)
    {
        LengthTriple t = typed.Value;
        return Point(path, t.Millimetres(), t.HalfStepMm(), typed.Node.Span, typed.Node.Span.Text, within);
    }

    /// <summary>Takes a point from a table into the parameter vector.</summary>
    public MeasuredPoint Point(string path, Vector3d at, double halfStepMm, SourceSpan span, string typed, Within within)
    {
        Remember(path, span);
        readings.Add(new TypedReading(path, Shown(typed), parameters, true));
        parameters += 3;
        Assume(path, within);
        return Parameters.Point(path, at, Math.Max(within.HalfWidthMm, halfStepMm), within.IsAssumed);
    }

    /// <summary>Takes a length into the parameter vector.</summary>
    /// <param name="path">Its path in the model.</param>
    /// <param name="typed">The length as read.</param>
    /// <param name="within">The half-width that applies.</param>
    /// <param name="widen">True for a reading, whose typed digits can widen it; false for a size that was taken from a maker or a caliper.</param>
    public MeasuredLength Length(string path, Placed<LengthReading> typed, Within within, bool widen = true)
    {
        double half = widen ? Math.Max(within.HalfWidthMm, typed.Value.HalfStepMm) : within.HalfWidthMm;
        Remember(path, typed.Span);
        readings.Add(new TypedReading(path, Shown(typed.Span.Text), parameters, false));
        Assume(path, within);
        return Computed(path, typed.Value.Length.Millimetres, half, within.IsAssumed);
    }

    /// <summary>Takes a number into the parameter vector that was worked out of what was typed.</summary>
    /// <param name="path">Its path in the model.</param>
    /// <param name="typed">What was typed, in words that say what it is.</param>
    /// <param name="at">Where it was typed.</param>
    /// <param name="valueMm">The number.</param>
    /// <param name="within">Its half-width.</param>
    public MeasuredLength Derived(string path, string typed, SourceSpan at, double valueMm, Within within)
    {
        Remember(path, at);
        readings.Add(new TypedReading(path, Shown(typed), parameters, false));
        Assume(path, within);
        return Computed(path, valueMm, within.HalfWidthMm, within.IsAssumed);
    }

    /// <summary>Takes a point that nobody typed into the parameter vector.</summary>
    public MeasuredPoint Computed(string path, Vector3d at, double halfWidthMm, bool withinIsAssumed)
    {
        parameters += 3;
        return Parameters.Point(path, at, halfWidthMm, withinIsAssumed);
    }

    /// <summary>Takes a number that nobody typed into the parameter vector.</summary>
    public MeasuredLength Computed(string path, double valueMm, double halfWidthMm, bool withinIsAssumed)
    {
        parameters++;
        return Parameters.Length(path, valueMm, halfWidthMm, withinIsAssumed);
    }

    /// <summary>The path of a point in the model.</summary>
    public string PathOf(MeasuredPoint point) => Parameters.Build().Parameters[point.X.OwnIndex].Reading;

    /// <summary>Notes in which state a point of a part was measured: on a moving body it is placed where that is not the state of the axle's layout.</summary>
    /// <param name="point">The point.</param>
    /// <param name="body">The body it rides on.</param>
    /// <param name="state">The state.</param>
    /// <param name="place">Where the point or its state is typed.</param>
    public void Stated(MeasuredPoint point, string body, string state, SourceSpan place)
    {
        if (AxleOf(body) is not { } axle || axle.MeasuredIn == state || !AxleTies.IsTied(axle.Name, state, place, this)) return;
        StatedPoints.Add(new StatedPoint(point, body, state));
    }

    /// <summary>The axle that a body belongs to; null for the chassis and what is fixed to it.</summary>
    public Axle? AxleOf(string body) => body.Split('/') is [var axle, _] ? Axles.Find(a => a.Name == axle) : null;

    private bool IsUsed(Axle axle, string state) =>
        StatedPoints.Exists(p => p.Axle == axle.Name && p.State == state) || axle.ComparedPoints.Any(p => p.State == state)
        || DirectGaps.Exists(g => g.State == state);

    /// <summary>Lists a half-width that nobody typed.</summary>
    public void Assume(string path, Within within)
    {
        if (within.IsAssumed) Assume(path, $"Give or take not typed: {NumberFormat.UpTo(within.HalfWidthMm, 2)} mm each way ({within.Why}; common practice, no source).");
    }

    /// <summary>What was typed, on one line with hidden characters made visible.</summary>
    public static string Shown(string typed) => VisibleText.Of(string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
}
