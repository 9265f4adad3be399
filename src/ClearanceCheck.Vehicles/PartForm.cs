using System.Collections.Immutable;

namespace ClearanceCheck.Vehicles;

/// <summary>What a part is to the engine. A closed family.</summary>
public abstract record PartForm
{
    private protected PartForm()
    {
    }

    /// <summary>The places at which it is joined to two bodies, or a leaf spring to three; empty for a part that is fixed to one.</summary>
    public ImmutableArray<Place> Ends => this switch
    {
        Hose hose => [hose.Upper, hose.Lower],
        Link link => [link.First, link.Second],
        Shock shock => [shock.Upper, shock.Lower],
        Shaft shaft => [shaft.First, shaft.Second],
        Coil coil => [coil.Lower, coil.Upper],
        BumpStop stop => [stop.Frame, stop.Axle],
        LimitStrap strap => [strap.Upper, strap.Lower],
        SteeringStop stop => [stop.First, stop.Second],
        LeafSpring leaf => [leaf.FixedEye, leaf.Seat, leaf.ShackleEye],
        _ => [],
    };

    /// <summary>The same form between other places.</summary>
    /// <param name="place">What becomes of each end.</param>
    /// <exception cref="InvalidOperationException">It is not a form between two places.</exception>
    public PartForm WithEnds(Func<Place, Place> place) => this switch
    {
        Hose hose => hose with { Upper = place(hose.Upper), Lower = place(hose.Lower) },
        Link link => link.WithPlaces(place),
        Shock shock => shock with { Upper = place(shock.Upper), Lower = place(shock.Lower) },
        Shaft shaft => shaft.WithPlaces(place),
        Coil coil => coil with { Lower = place(coil.Lower), Upper = place(coil.Upper) },
        BumpStop stop => stop with { Frame = place(stop.Frame), Axle = place(stop.Axle) },
        LimitStrap strap => strap with { Upper = place(strap.Upper), Lower = place(strap.Lower) },
        SteeringStop stop => stop with { First = place(stop.First), Second = place(stop.Second) },
        LeafSpring leaf => leaf with { FixedEye = place(leaf.FixedEye), Seat = place(leaf.Seat), ShackleEye = place(leaf.ShackleEye) },
        _ => throw new InvalidOperationException("The form has no ends."),
    };

    /// <summary>A line, pipe or tube: a polyline of its axis and an outside diameter, all on the part's body.</summary>
    /// <param name="JoinedEnds">Numbers of path points (from 0) at which the part is joined to something: contact near them is meant.</param>
    public sealed record Chain(ImmutableArray<MeasuredPoint> Path, MeasuredLength OutsideDiameter, ImmutableArray<int> JoinedEnds) : PartForm;

    /// <summary>A plate: its outline around the middle of its thickness, on the part's body. The edges are round.</summary>
    public sealed record Plate(ImmutableArray<MeasuredPoint> Outline, MeasuredLength Thickness) : PartForm;

    /// <summary>A solid box on the part's body, its edges along the vehicle's axes in the measured state.</summary>
    public sealed record Box(MeasuredPoint Corner, MeasuredPoint Opposite) : PartForm;

    /// <summary>A solid of revolution on the part's body: a housing, rotor, drum or flange.</summary>
    /// <param name="From">A point on its axis, from which the profile's places along it are counted.</param>
    /// <param name="To">A second point on its axis, in the direction in which they are counted.</param>
    /// <param name="Profile">Its outline, corner by corner.</param>
    /// <param name="Wall">Thickness of the wall around the profile; null for a body that is full up to its axis.</param>
    public sealed record Turned(MeasuredPoint From, MeasuredPoint To, ImmutableArray<ProfileCorner> Profile, MeasuredLength? Wall) : PartForm;

    /// <summary>A tire as it is swept: new, grown, on its rim, with chains where they are declared.</summary>
    /// <param name="RadiusMm">Outer radius.</param>
    /// <param name="WidthMm">Section width at the bulge.</param>
    /// <param name="Offset">The rim's middle plane lies this far inboard of the mounting face.</param>
    /// <param name="RimRadiusMm">Radius of the bead seat.</param>
    public sealed record Tire(WheelSeat Seat, MeasuredLength RadiusMm, MeasuredLength WidthMm, MeasuredLength Offset, double RimRadiusMm) : PartForm;

    /// <summary>A wheel as its inner faces: the barrel around what lives inside it, and the disc. Places along its axis count outboard from the mounting face.</summary>
    /// <param name="Barrel">The barrel's inner face.</param>
    /// <param name="Disc">The disc's inner face; empty where nobody measured it.</param>
    public sealed record Wheel(
        WheelSeat Seat, ImmutableArray<ProfileCorner> Barrel, MeasuredLength BarrelWall, ImmutableArray<ProfileCorner> Disc, MeasuredLength DiscWall) : PartForm;

    /// <summary>A scanned surface on the part's body.</summary>
    /// <param name="Scan">The triangles.</param>
    /// <param name="Shift">Where the scan may lie beside its place: zero in the measured state, as uncertain as the scan.</param>
    public sealed record Scanned(Scan Scan, MeasuredPoint Shift) : PartForm;

    /// <summary>A hose between two places where the rubber leaves the ferrules.</summary>
    public sealed record Hose(Place Upper, Place Lower, MeasuredLength FreeLength, MeasuredLength OutsideDiameter) : PartForm;

    /// <summary>A straight tube between two places that keeps its length: a link, a track bar, a tie rod.</summary>
    public sealed record Link(Place First, Place Second, MeasuredLength OutsideDiameter) : PartForm
    {
        /// <summary>A point on the axis of the stud, ball or bolt that holds its first end, on the body that carries it; null where nobody measured one.</summary>
        public MeasuredPoint? FirstAxis { get; init; }

        /// <summary>The same at its second end.</summary>
        public MeasuredPoint? SecondAxis { get; init; }

        internal Link WithPlaces(Func<Place, Place> place) => this with
        {
            First = place(First),
            Second = place(Second),
            FirstAxis = FirstAxis is { } first ? place(new Place(First.Body, first)).At : null,
            SecondAxis = SecondAxis is { } second ? place(new Place(Second.Body, second)).At : null,
        };
    }

    /// <summary>A shock between two places: it ends the travel where it is fully open or closed.</summary>
    /// <param name="Sleeves">Its tube and rod; null where nobody measured them.</param>
    public sealed record Shock(Place Upper, Place Lower, MeasuredLength Closed, MeasuredLength Open, Sleeves? Sleeves) : PartForm;

    /// <summary>A shaft of two halves that slide in each other between two places.</summary>
    public sealed record Shaft(Place First, Place Second, Sleeves Sleeves) : PartForm
    {
        /// <summary>The joint at its first end; the piece before it, where there is one, is what it is bolted to.</summary>
        public ShaftEnd FirstEnd { get; init; } = new(ShaftJointKind.Single, null);

        /// <summary>The joint at its second end; there is none where another piece follows, whose first joint it is.</summary>
        public ShaftEnd SecondEnd { get; init; } = new(ShaftJointKind.Single, null);

        /// <summary>Its splines; null where nobody measured them.</summary>
        public Splines? Splines { get; init; }

        /// <summary>By how much the yoke at its second end is turned against that at its first, right-handed about the line from the first to the second, rad.</summary>
        public double PhaseRad { get; init; }

        /// <summary>The id of the shaft that ends in a centre bearing where this one begins; null for one that begins at an output.</summary>
        public string? After { get; init; }

        /// <summary>The points ahead of its joints, with the bodies they ride on.</summary>
        public IEnumerable<Place> Aheads
        {
            get
            {
                if (FirstEnd.Ahead is { } first) yield return new Place(First.Body, first);
                if (SecondEnd.Ahead is { } second) yield return new Place(Second.Body, second);
            }
        }

        internal Shaft WithPlaces(Func<Place, Place> place) => this with
        {
            First = place(First),
            Second = place(Second),
            FirstEnd = FirstEnd with { Ahead = FirstEnd.Ahead is { } first ? place(new Place(First.Body, first)).At : null },
            SecondEnd = SecondEnd with { Ahead = SecondEnd.Ahead is { } second ? place(new Place(Second.Body, second)).At : null },
        };
    }

    /// <summary>A coil spring: a wire that winds around the line between the middles of its seats.</summary>
    /// <param name="OutsideDiameter">Over the wire.</param>
    /// <param name="Turns">Between the seats.</param>
    public sealed record Coil(Place Lower, Place Upper, MeasuredLength OutsideDiameter, MeasuredLength Wire, double Turns) : PartForm
    {
        /// <summary>Its length when its turns lie on each other: it ends the travel there; null where nobody typed it.</summary>
        public MeasuredLength? SolidHeight { get; init; }

        /// <summary>Its length free of load; null where nobody typed it.</summary>
        public MeasuredLength? FreeLength { get; init; }
    }

    /// <summary>A bump stop on the frame above a pad on the axle; it ends the travel at its crushed height.</summary>
    /// <param name="Crush">What it gives under load, mm.</param>
    public sealed record BumpStop(Place Frame, Place Axle, MeasuredLength Height, MeasuredLength Crush) : PartForm;

    /// <summary>A limit strap between two places: it ends the travel where it is taut and stretched.</summary>
    /// <param name="Stretch">What it gives when taut, mm.</param>
    public sealed record LimitStrap(Place Upper, Place Lower, MeasuredLength Length, MeasuredLength Stretch) : PartForm;

    /// <summary>A bolt and the pad it meets when the wheels are steered, on the knuckle and the axle or the other way round; measured with the wheels straight ahead.</summary>
    /// <remarks>It ends the steering when the gap along the line between both, which rides on the first body, is closed and the stop has given its mm.</remarks>
    public sealed record SteeringStop(Place First, Place Second) : PartForm;

    /// <summary>A leaf spring between an eye on the frame and one on a shackle, clamped to its axle in between; it bends as its axle's layout says.</summary>
    /// <param name="Seat">The middle of the main leaf at the centre pin.</param>
    /// <param name="Clamp">How long it is held flat.</param>
    /// <param name="Thickness">Of the main leaf, which is uppermost.</param>
    /// <param name="Stack">Of all leaves together.</param>
    /// <param name="Shape">How far it may lie beside the shape that the layout gives it, up and down: zero, as uncertain as that shape.</param>
    public sealed record LeafSpring(
        Place FixedEye, Place Seat, Place ShackleEye, MeasuredLength Clamp, MeasuredLength Width, MeasuredLength Thickness, MeasuredLength Stack, MeasuredLength Shape) : PartForm;

    /// <summary>A part of which nothing is known but its body: only gaps that were read to it directly speak of it.</summary>
    public sealed record Unshaped : PartForm;
}

/// <summary>A corner of a profile that is turned around an axis.</summary>
/// <param name="Radius">From the axis.</param>
/// <param name="Along">Along the axis.</param>
public readonly record struct ProfileCorner(MeasuredLength Radius, MeasuredLength Along);

/// <summary>Two tubes that slide in each other along one line: each keeps its length and stays joined at its own end.</summary>
/// <param name="TubeAtFirst">True when the thicker tube is at the first (the upper) end.</param>
/// <param name="TubeDiameter">Outside diameter of the thicker tube.</param>
/// <param name="TubeLength">From its joint to its open end.</param>
/// <param name="RodDiameter">Outside diameter of what slides in it.</param>
/// <param name="RodLength">From its joint to its inner end.</param>
public sealed record Sleeves(
    bool TubeAtFirst, MeasuredLength TubeDiameter, MeasuredLength TubeLength, MeasuredLength RodDiameter, MeasuredLength RodLength);

/// <summary>Where a wheel is bolted on.</summary>
/// <param name="Hub">The middle of the mounting face.</param>
/// <param name="OtherHub">The hub of the axle's other wheel where both are on one body: the two make the axis. Null for a hub whose axis is taken as square to the centre plane.</param>
public sealed record WheelSeat(MeasuredPoint Hub, MeasuredPoint? OtherHub, bool IsLeft);
