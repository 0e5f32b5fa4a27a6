using System.Reflection;

namespace FuelMath.Tests.Calls;

/// <summary>The name under which the compiler writes down the documentation of a member.</summary>
internal static class DocumentationId
{
    internal static string Of(MethodBase method)
    {
        Type type = method.DeclaringType!;
        if (method.IsSpecialName && PropertyOf(method) is { } property)
        {
            return $"P:{Name(type)}.{property.Name}{Arguments(property.GetIndexParameters())}";
        }

        string name = method.IsConstructor ? "#ctor" : method.Name;
        string generic = method.IsGenericMethod ? $"``{method.GetGenericArguments().Length}" : "";
        string made = method.Name is "op_Implicit" or "op_Explicit" ? $"~{Shown(((MethodInfo)method).ReturnType)}" : "";
        return $"M:{Name(type)}.{name}{generic}{Arguments(method.GetParameters())}{made}";
    }

    private static PropertyInfo? PropertyOf(MethodBase accessor) =>
        accessor
            .DeclaringType!.GetProperties(House.PublicApi.Declared)
            .FirstOrDefault(p => p.GetMethod == accessor || p.SetMethod == accessor);

    private static string Arguments(ParameterInfo[] parameters) =>
        parameters.Length == 0 ? "" : $"({string.Join(",", parameters.Select(p => Shown(p.ParameterType)))})";

    private static string Name(Type type) => type.FullName!.Replace('+', '.');

    private static string Shown(Type type)
    {
        if (type.IsByRef)
        {
            return Shown(type.GetElementType()!) + "@";
        }

        if (type.IsArray)
        {
            return Shown(type.GetElementType()!) + "[]";
        }

        if (type.IsGenericParameter)
        {
            return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        }

        if (!type.IsGenericType)
        {
            return Name(type);
        }

        string whole = type.GetGenericTypeDefinition().FullName!;
        return $"{whole[..whole.IndexOf('`', StringComparison.Ordinal)].Replace('+', '.')}{{{string.Join(",", type.GetGenericArguments().Select(Shown))}}}";
    }
}
