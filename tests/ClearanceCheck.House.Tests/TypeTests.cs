using System.Reflection;

namespace ClearanceCheck.House.Tests;

public sealed class TypeTests
{
    public static TheoryData<string> Assemblies => [.. ProjectRules.Rooms.Keys.Select(room => room == "Cli" ? "clearance-check" : "ClearanceCheck." + room)];

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Structs_are_readonly(string assembly) => TypeRules.StructsThatCanChange(Written(assembly)).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Classes_are_sealed_static_or_abstract(string assembly) => TypeRules.OpenClasses(Written(assembly)).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void No_static_field_can_change(string assembly) => TypeRules.StaticFieldsThatCanChange(Written(assembly)).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void No_shared_collection_can_change(string assembly) => TypeRules.SharedCollectionsThatCanChange(Written(assembly)).ShouldBeEmpty();

    [Fact]
    public void A_struct_that_can_change_is_found() =>
        TypeRules.StructsThatCanChange([typeof(LooseStruct), typeof(Guid), typeof(DayOfWeek)]).ShouldBe([typeof(LooseStruct).FullName!]);

    [Fact]
    public void An_open_class_is_found() =>
        TypeRules.OpenClasses([typeof(OpenClass), typeof(TypeTests), typeof(TypeRules), typeof(Stream), typeof(IDisposable)]).ShouldBe([typeof(OpenClass).FullName!]);

    [Fact]
    public void Static_state_is_found()
    {
        OpenClass.Count++;

        TypeRules.StaticFieldsThatCanChange([typeof(OpenClass)]).Count().ShouldBe(2);
        TypeRules.SharedCollectionsThatCanChange([typeof(OpenClass)]).ShouldBe([$"{typeof(OpenClass).FullName}.Shared"]);
    }

    private static Type[] Written(string assembly)
    {
        Type[] types = [.. TypeRules.Written(Assembly.Load(assembly))];
        types.ShouldNotBeEmpty();
        return types;
    }

#pragma warning disable CA1051, CA2211, CA1802 // Made to be found.
    private struct LooseStruct
    {
        public int Value;

        public void Set(int value) => Value = value;
    }

    private class OpenClass
    {
        public const int Fixed = 1;
        public static readonly int Once = Environment.ProcessorCount;
        public static readonly List<int> Shared = [];
        public static int Count;

        public static int Property { get; set; }
    }
#pragma warning restore CA1051, CA2211, CA1802
}
