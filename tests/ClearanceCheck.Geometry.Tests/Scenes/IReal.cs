namespace ClearanceCheck.Geometry.Tests.Scenes;

/// <summary>What the slow references need of a number, so that each is written once and computed in 16 or in 31 digits.</summary>
internal interface IReal<T>
    where T : struct, IReal<T>
{
    static abstract T Of(double value);

    static abstract T Root(T a);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract bool operator <(T a, T b);

    static abstract bool operator >(T a, T b);

    double ToDouble();
}
