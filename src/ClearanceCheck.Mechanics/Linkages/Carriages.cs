using System.Collections.Immutable;
using ClearanceCheck.Geometry;

namespace ClearanceCheck.Mechanics.Linkages;

/// <summary>Decides which body is carried by which: hinges and slides from the chassis outward, then from the first body of what is left.</summary>
internal static class Carriages
{
    /// <summary>The carriages of all bodies, for each joint whether it became a carriage, and the bodies in an order in which parents come first.</summary>
    /// <param name="bodies">How many bodies there are, the chassis among them.</param>
    /// <param name="joints">The joints.</param>
    /// <param name="driven">Bodies whose places are known.</param>
    public static (ImmutableArray<Carriage> Bodies, ImmutableArray<bool> IsCarriage, ImmutableArray<int> Order) Of(int bodies, ImmutableArray<Joint> joints, ImmutableArray<int> driven)
    {
        var carriages = new Carriage[bodies];
        var placed = new bool[bodies];
        var used = new bool[joints.Length];
        var order = new List<int>();
        int unknowns = 0;
        Place(0, new Carriage(CarriageKind.Chassis, 0, default, default, 0));
        foreach (int body in driven) Place(body, new Carriage(CarriageKind.Driven, 0, default, default, 0));
        for (int body = 0; body < bodies; body++)
        {
            if (body > 0 && placed[body]) continue;
            if (body > 0) Place(body, new Carriage(CarriageKind.Free, 0, default, default, unknowns));
            while (Next() is var (joint, carried, carriage))
            {
                used[joint] = true;
                Place(carried, carriage);
            }
        }

        return ([.. carriages], [.. used], [.. order]);

        void Place(int body, Carriage carriage)
        {
            (carriages[body], placed[body]) = (carriage with { FirstUnknown = unknowns }, true);
            unknowns += carriage.Unknowns;
            order.Add(body);
        }

        // The hinge nearest to the chassis: of the body that was placed first.
        (int Joint, int Body, Carriage Carriage)? Next()
        {
            foreach (int parent in order)
                for (int j = 0; j < joints.Length; j++)
                {
                    if (Pair(joints[j]) is not var (first, second)) continue;
                    int other = first == parent ? second : second == parent ? first : -1;
                    if (other < 0 || placed[other]) continue;
                    return (j, other, Carriage(joints[j], parent));
                }

            return null;
        }
    }

    private static (int First, int Second)? Pair(Joint joint) => joint switch
    {
        Joint.Hinge hinge => (hinge.FirstBody, hinge.SecondBody),
        Joint.Slide slide => (slide.FirstBody, slide.SecondBody),
        _ => null,
    };

    private static Carriage Carriage(Joint joint, int parent)
    {
        (CarriageKind kind, int first, Vector3d point, Vector3d axis) = joint switch
        {
            Joint.Hinge hinge => (CarriageKind.Turning, hinge.FirstBody, hinge.Point, hinge.Axis),
            Joint.Slide slide => (CarriageKind.Sliding, slide.FirstBody, slide.Point, slide.Axis),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        // The joint's angle counts from its first body to its second, whichever is carried.
        Vector3d along = axis.NormalizedOr(Vector3d.UnitZ);
        return new Carriage(kind, parent, point, first == parent ? along : -along, 0);
    }
}
