using System.Collections.Immutable;
using ClearanceCheck.Kinematics.Layouts;
using ClearanceCheck.Kinematics.Placing;
using ClearanceCheck.Mechanics.Linkages;
using ClearanceCheck.Vehicles;

namespace ClearanceCheck.Kinematics;

/// <summary>The vehicle in motion: every axle as a module of its own, every body found by name.</summary>
public sealed class VehicleMotion
{
    private VehicleMotion(Vehicle vehicle, ReadOnlyMemory<double> parameters, ImmutableArray<AxleModule> modules) =>
        (Vehicle, Parameters, Modules) = (vehicle, parameters, modules);

    public Vehicle Vehicle { get; }

    /// <summary>The parameter values that this motion was made with; points measured in another state than their axle's layout are placed in them.</summary>
    public ReadOnlyMemory<double> Parameters { get; }

    public ImmutableArray<AxleModule> Modules { get; }

    /// <summary>Sets a vehicle in motion, or names the axle that can't be moved, or can't stand as it was measured, and why.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="typed">Values of the parameter vector as typed: the measured ones, or ones changed to see what a reading does.</param>
    public static (VehicleMotion? Motion, string? Axle, MotionFault? Fault) Build(Vehicle vehicle, ReadOnlyMemory<double> typed)
    {
        // What moves decides where points of other states lie, and only then can stops and what follows two points be made of them.
        (ReadOnlyMemory<double> parameters, string? unplaced, MotionFault? unreached) = StatePlacing.Place(vehicle, typed);
        if (unreached is not null) return (null, unplaced, unreached);
        var modules = ImmutableArray.CreateBuilder<AxleModule>(vehicle.Axles.Length);
        foreach (Axle axle in vehicle.Axles)
        {
            (AxleModule? module, LinkageFault? fault) = AxleModuleBuilder.Build(vehicle, axle, parameters);
            if (module is null) return (null, axle.Name, new MotionFault.Links(fault!));
            modules.Add(module);
        }

        return (new VehicleMotion(vehicle, parameters, modules.MoveToImmutable()), null, null);
    }

    /// <summary>The body that carries the tube at one end of a part between two places.</summary>
    /// <param name="part">A link, shock or shaft.</param>
    /// <param name="atFirst">True for the tube that stays joined at the part's first end.</param>
    public string CarrierOf(Part part, bool atFirst)
    {
        string follower = AxleModule.FollowerName(part.Id, atFirst);
        return Modules.Any(m => m.Bodies.Contains(follower)) ? follower : part.Form.Ends[0].Body;
    }

    /// <summary>The bodies that a part rides on.</summary>
    public ImmutableArray<string> CarriersOf(Part part) => part.Form switch
    {
        PartForm.Link => [CarrierOf(part, true)],
        PartForm.LeafSpring spring => [spring.Seat.Body, .. LeafPieces.Names(part.Id)],
        PartForm.Shock { Sleeves: not null } or PartForm.Shaft => [CarrierOf(part, true), CarrierOf(part, false)],
        _ when part.Form.Ends.IsEmpty => [part.Body],
        _ => [.. part.Form.Ends.Select(e => e.Body)],
    };

    /// <summary>The module and number of a body: no module and number 0 for the chassis and what is fixed to it.</summary>
    /// <exception cref="ArgumentException">No such body.</exception>
    public (AxleModule? Module, int Number) Find(string body)
    {
        if (body == Vehicles.Vehicle.Chassis || Vehicle.FixedBodies.Contains(body)) return (null, 0);
        foreach (AxleModule module in Modules)
            if (module.Bodies.IndexOf(body) is > 0 and var number) return (module, number);
        throw new ArgumentException($"No body {body}.", nameof(body));
    }
}
