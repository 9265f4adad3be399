using System.Diagnostics;
using ClearanceCheck.Documents;
using ClearanceCheck.Documents.Reading;
using ClearanceCheck.Units;
using ClearanceCheck.Vehicles.Tires;

namespace ClearanceCheck.Files;

/// <summary>Messages about wheels, tires and the rods of an axle.</summary>
internal static partial class FileMessages
{
    private const double FarUnderAnyTireMm = 100;

    public static void NoTireSize(MappingReader wheel) => wheel.Fault(
        "file.no-tire-size",
        "Neither the tire's size nor its circumference is typed, so it has no shape.",
        "Write `tire: 285/75R16` as on the sidewall, or `tire-circumference` as measured around the tread, with `tire-width` and `rim-diameter`.");

    public static void NoSuchTireSize(Field field, string typed, TireSizeFault fault, string instead) => field.Fault(
        "file.no-such-tire-size",
        $"`{VisibleText.Of(typed)}` is not a tire size: {Wrong(fault)}.",
        InInches(typed) + $"Write it as on the sidewall, such as `285/75R16` or `35x12.50R17LT`, or type {instead} instead.");

    // A tire is named in inches more often than measured in millimetres; it is only asked, never taken.
    private static string InInches(string typed)
    {
        if (!LengthText.Parse(typed, null).TryGet(out LengthReading read, out _)) return "";
        double mm = read.Length.Millimetres;
        return read.Unit == LengthUnit.Millimetre && mm is > 0 and < FarUnderAnyTireMm
            ? $"That is far under the range; is it {NumberFormat.UpTo(mm, 3)} in = {NumberFormat.UpTo(Length.FromInches(mm).Millimetres, 0)} mm? "
            : "";
    }

    public static void CircumferenceDiffers(Field field, double sizeMm) => field.Fault(
        "file.circumference-differs",
        $"The circumference does not fit the tire's size: a new tire of that size is about {NumberFormat.UpTo(sizeMm, 0)} mm around.",
        "Measure once around the middle of the tread, or look at the size on the sidewall again.");

    public static void RimDiameterTwice(Field field) => field.Fault(
        "file.rim-diameter-twice", "The tire's size says the rim's diameter already.", "Leave `rim-diameter` out; it is for a tire without a readable size.");

    public static void OffsetBeyondRim(Field field, double rimWidthMm) => field.Fault(
        "file.offset-beyond-rim",
        $"The mounting face would lie far outside the rim, which is {Millimetres(rimWidthMm)} wide.",
        "The offset counts from the rim's middle to the mounting face, as stamped on the wheel: `offset: -12 mm`; look at the unit and at `rim-width`.");

    public static void BarrelWiderThanBead(Field corner, double beadMm) => corner.Fault(
        "file.barrel-wider-than-bead",
        $"The barrel's inner face can't lie outside the bead seat, whose radius is {Millimetres(beadMm)}.",
        "The first number of a corner is the radius from the wheel's axis, half of the diameter; the second its place outboard of the mounting face.");

    public static void DiscBeyondBarrel(Field corner, double barrelMm) => corner.Fault(
        "file.disc-beyond-barrel",
        $"The disc would reach beyond the barrel, whose largest radius is {Millimetres(barrelMm)}.",
        "The first number of a corner is the radius from the wheel's axis, the second its place outboard of the mounting face.");

    public static void BarrelBesideRim(Field field, double fromMm, double toMm) => field.Fault(
        "file.barrel-beside-rim",
        $"The barrel lies beside the rim: with this width and offset the rim reaches from {Millimetres(fromMm)} to {Millimetres(toMm)} outboard of the mounting face.",
        "Places along the barrel are positive outboard, away from the vehicle, and negative inboard; look at their signs and at the offset's.");

    public static void RodWithoutLength(Field field, string rod) => field.Fault(
        "file.rod-without-length", $"Both ends of {rod} are measured as the same point, so there is no rod that could have a diameter.", "Measure both ends of the rod again.");

    public static void NoRods(Field field, string axle) => field.Fault(
        "file.no-rods", $"The axle {axle} has no rods that a diameter could be typed for.", "Leave `links` out, and describe each arm as a part of its own.");

    public static void RimLargerThanTire(Field field, double radiusMm) => field.Fault(
        "file.rim-larger-than-tire",
        $"The rim can't be as large as the tire, whose diameter is {Millimetres(2 * radiusMm)} by its circumference.",
        "Measure once around the tread for `tire-circumference`; the rim's diameter is the last number on the sidewall, in inches.");

    private static string Wrong(TireSizeFault fault) => fault switch
    {
        TireSizeFault.Form => "it can't be read",
        TireSizeFault.SectionWidth => "no tire is that wide",
        TireSizeFault.AspectRatio => "no tire has that height for its width",
        TireSizeFault.RimDiameter => "no rim has that diameter, or the tire would not reach around it",
        TireSizeFault.OverallDiameter => "no tire has that diameter",
        _ => throw new UnreachableException(),
    };
}
