using System.Reflection;

namespace FuelMath.Tests.House;

/// <summary>What a user of the library can see, by reflection.</summary>
internal static class PublicApi
{
    internal const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    internal static Assembly Library { get; } = typeof(DataSource).Assembly;

    internal static Type[] Types { get; } = Library.GetExportedTypes();

    /// <summary>Methods, constructors, operators and the halves of properties.</summary>
    internal static MethodBase[] Methods { get; } =
    [.. Types.Where(t => !t.IsEnum).SelectMany(t => t.GetMembers(Declared)).OfType<MethodBase>()];

    internal static PropertyInfo[] Properties { get; } = [.. Types.SelectMany(t => t.GetProperties(Declared))];

    internal static FieldInfo[] Fields { get; } =
    [.. Types.Where(t => !t.IsEnum).SelectMany(t => t.GetFields(Declared))];

    /// <summary>A type as a reader writes it: a nested one after its owner.</summary>
    internal static string NameOf(Type type) =>
        type.DeclaringType is { } owner ? $"{NameOf(owner)}.{type.Name}" : type.Name;

    /// <summary>A type and everything named inside it: elements, type arguments, and theirs.</summary>
    internal static IEnumerable<Type> Mentioned(Type type)
    {
        IEnumerable<Type> inner =
            type.HasElementType ? Mentioned(type.GetElementType()!)
            : type.IsGenericType ? type.GetGenericArguments().SelectMany(Mentioned)
            : [];
        return inner.Prepend(type);
    }
}
