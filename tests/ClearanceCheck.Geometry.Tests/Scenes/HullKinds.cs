namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>All pairs of shapes, each once.</summary>
public static class HullKinds
{
    public static TheoryData<HullShape, HullShape> All
    {
        get
        {
            var all = new TheoryData<HullShape, HullShape>();
            foreach (HullShape first in Enum.GetValues<HullShape>())
                foreach (HullShape second in Enum.GetValues<HullShape>())
                    if (second <= first) all.Add(first, second);
            return all;
        }
    }
}
