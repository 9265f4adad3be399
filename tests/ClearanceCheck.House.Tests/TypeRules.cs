using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace ClearanceCheck.House.Tests;

/// <summary>What types may be; each rule lists what breaks it.</summary>
internal static class TypeRules
{
    private const BindingFlags AllStatic = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    /// <summary>Types that a person wrote: the compiler's own have a name that C# can't say.</summary>
    public static IEnumerable<Type> Written(Assembly assembly) => assembly.GetTypes().Where(t => !IsMade(t));

    public static IEnumerable<string> StructsThatCanChange(IEnumerable<Type> types) =>
        types.Where(t => t.IsValueType && !t.IsEnum && !IsScratch(t) && !t.IsDefined(typeof(IsReadOnlyAttribute), false)).Select(t => t.FullName!);

    // What a kernel of Geometry counts up on the stack; nobody outside can hold it.
    private static bool IsScratch(Type type) => type.Namespace == "ClearanceCheck.Geometry.Gaps" && (type.IsNestedPrivate || (type.IsByRefLike && !type.IsPublic));

    public static IEnumerable<string> OpenClasses(IEnumerable<Type> types) =>
        types.Where(t => t.IsClass && !t.IsSealed && !t.IsAbstract).Select(t => t.FullName!);

    public static IEnumerable<string> StaticFieldsThatCanChange(IEnumerable<Type> types) =>
        types.SelectMany(t => t.GetFields(AllStatic)).Where(f => !f.IsLiteral && !f.IsInitOnly && !f.Name.StartsWith("<>", StringComparison.Ordinal)).Select(Name);

    /// <summary>Collections that others could change: static ones that are seen outside their class.</summary>
    public static IEnumerable<string> SharedCollectionsThatCanChange(IEnumerable<Type> types)
    {
        foreach (Type type in types)
        {
            foreach (FieldInfo field in type.GetFields(AllStatic))
                if (!field.IsPrivate && CanChange(field.FieldType)) yield return Name(field);
            foreach (PropertyInfo property in type.GetProperties(AllStatic))
                if (property.GetMethod is { IsPrivate: false } && property.CanRead && IsStored(type, property) && CanChange(property.PropertyType)) yield return $"{type.FullName}.{property.Name}";
        }
    }

    // A property that makes a new collection each time shares nothing.
    private static bool IsStored(Type type, PropertyInfo property) => type.GetField($"<{property.Name}>k__BackingField", AllStatic) is not null;

    private static bool CanChange(Type type) =>
        type.IsArray || (typeof(IEnumerable).IsAssignableFrom(type) && type.IsGenericType
            && (type.Namespace is "System.Collections.Generic" && !type.IsInterface || type.Namespace is "System.Collections.Concurrent"));

    private static bool IsMade(Type type) => type.Name.Contains('<', StringComparison.Ordinal) || (type.DeclaringType is { } outer && IsMade(outer))
        || type.Namespace is "Microsoft.CodeAnalysis" or "System.Runtime.CompilerServices";

    private static string Name(FieldInfo field) => $"{field.DeclaringType!.FullName}.{field.Name}";
}
