using System.Globalization;
using System.Reflection;

namespace FuelMath.Tests.House;

/// <summary>What a user of an assembly can name: a line for each public type and member, as C# would write it.</summary>
internal static class Surface
{
    private const BindingFlags Declared = PublicApi.Declared | BindingFlags.NonPublic;

    private static readonly Dictionary<Type, string> Keywords = new()
    {
        [typeof(bool)] = "bool",
        [typeof(byte)] = "byte",
        [typeof(char)] = "char",
        [typeof(double)] = "double",
        [typeof(float)] = "float",
        [typeof(int)] = "int",
        [typeof(long)] = "long",
        [typeof(object)] = "object",
        [typeof(string)] = "string",
        [typeof(uint)] = "uint",
        [typeof(ulong)] = "ulong",
        [typeof(void)] = "void",
    };

    internal static IEnumerable<string> Of(Assembly assembly) =>
        assembly.GetExportedTypes().SelectMany(Of).Order(StringComparer.Ordinal);

    internal static IEnumerable<string> Of(Type type)
    {
        string name = Name(type);
        IEnumerable<string> members = type.IsEnum
            ? Enum.GetNames(type)
                .Select(n => $"{n} = {Convert.ToInt64(Enum.Parse(type, n), CultureInfo.InvariantCulture)}")
            : type.GetMembers(Declared).Where(IsSeen).Select(m => Of(m)!).Where(m => m is not null);
        return members.Select(m => $"{name}.{m}").Prepend($"{name}: {Header(type)}");
    }

    private static string Header(Type type)
    {
        string kind =
            type.IsEnum ? "enum"
            : type.IsValueType
                ? type.IsDefined(typeof(System.Runtime.CompilerServices.IsReadOnlyAttribute), false) ? "readonly struct"
                    : "struct"
            : type.IsInterface ? "interface"
            : type.IsAbstract && type.IsSealed ? "static class"
            : type.IsAbstract ? "abstract class"
            : type.IsSealed ? "sealed class"
            : "class";
        Type[] inherited = type.BaseType?.GetInterfaces() ?? [];
        IEnumerable<string> bases = type.IsEnum
            ? [Enum.GetUnderlyingType(type).Name]
            : type.GetInterfaces()
                .Where(i => i.IsPublic && !inherited.Contains(i))
                .Select(Text)
                .Order(StringComparer.Ordinal);
        if (type is { IsClass: true, BaseType: { } above } && above != typeof(object))
        {
            bases = bases.Prepend(Text(above));
        }

        string list = string.Join(", ", bases);
        return (list.Length > 0 ? $"{kind} : {list}" : kind) + Constraints(type.GetGenericArguments());
    }

    private static string? Of(MemberInfo member) =>
        member switch
        {
            ConstructorInfo { IsStatic: false } constructor => $"new({Parameters(constructor)})",
            MethodInfo method when !IsAccessor(method) => Of(method),
            PropertyInfo property => Of(property),
            FieldInfo { IsLiteral: true } constant =>
                $"const {constant.Name} = {Convert.ToString(constant.GetRawConstantValue(), CultureInfo.InvariantCulture)}",
            FieldInfo field => $"field {field.Name}: {Text(new NullabilityInfoContext().Create(field))}",
            Type => null,
            _ => null,
        };

    private static string Of(MethodInfo method)
    {
        string generic = method.IsGenericMethodDefinition
            ? $"<{string.Join(", ", method.GetGenericArguments().Select(a => a.Name))}>"
            : "";
        string constraints = method.IsGenericMethodDefinition ? Constraints(method.GetGenericArguments()) : "";
        return $"{Manner(method)}{method.Name}{generic}({Parameters(method)}): {Result(method.ReturnParameter)}{constraints}";
    }

    private static string Of(PropertyInfo property)
    {
        MethodInfo accessor = property.GetMethod ?? property.SetMethod!;
        string index = property.GetIndexParameters() is { Length: > 0 } indexes
            ? $"[{string.Join(", ", indexes.Select(Parameter))}]"
            : "";
        string halves =
            $"{(property.GetMethod is { } get && IsSeen(get) ? "get; " : "")}{(property.SetMethod is { } set && IsSeen(set) ? "set; " : "")}";
        return $"{Manner(accessor)}{property.Name}{index} {{ {halves}}}: {Text(new NullabilityInfoContext().Create(property))}";
    }

    private static string Manner(MethodInfo method) =>
        (method.IsFamily ? "protected " : "")
        + (method.IsStatic ? "static " : "")
        + (
            method.IsAbstract ? "abstract "
            : method.IsVirtual && !method.IsFinal && method.GetBaseDefinition() != method ? "override "
            : method.IsVirtual && !method.IsFinal ? "virtual "
            : ""
        );

    private static bool IsSeen(MemberInfo member) =>
        member switch
        {
            MethodBase method => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly,
            PropertyInfo property => property.GetAccessors(true).Any(a => IsSeen(a)),
            FieldInfo field => field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly,
            _ => false,
        };

    private static bool IsAccessor(MethodInfo method) =>
        method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal);

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo parameter)
    {
        string by =
            !parameter.ParameterType.IsByRef ? ""
            : parameter.IsOut ? "out "
            : parameter.IsIn ? "in "
            : "ref ";
        string many = parameter.IsDefined(typeof(ParamArrayAttribute), false) ? "params " : "";
        return $"{many}{by}{Result(parameter)} {parameter.Name}";
    }

    private static string Result(ParameterInfo parameter) =>
        parameter.ParameterType is { IsByRef: true } type
            ? Text(type.GetElementType()!)
            : Text(new NullabilityInfoContext().Create(parameter));

    private static string Text(NullabilityInfo info)
    {
        Type type = info.Type;
        string text =
            info.ElementType is { } element ? $"{Text(element)}[{new string(',', type.GetArrayRank() - 1)}]"
            : Nullable.GetUnderlyingType(type) is null && type.IsGenericType
                ? $"{Plain(type)}<{string.Join(", ", info.GenericTypeArguments.Select(Text))}>"
            : Text(type);
        return !type.IsValueType && !type.IsGenericParameter && info.ReadState == NullabilityState.Nullable
            ? text + "?"
            : text;
    }

    private static string Text(Type type) =>
        Keywords.TryGetValue(type, out string? keyword) ? keyword
        : Nullable.GetUnderlyingType(type) is { } plain ? Text(plain) + "?"
        : type.IsArray ? $"{Text(type.GetElementType()!)}[{new string(',', type.GetArrayRank() - 1)}]"
        : type.IsPointer ? Text(type.GetElementType()!) + "*"
        : type.IsGenericParameter ? type.Name
        : type.IsGenericType ? $"{Plain(type)}<{string.Join(", ", type.GetGenericArguments().Select(Text))}>"
        : Plain(type);

    private static string Name(Type type) =>
        $"{type.Namespace}.{Plain(type)}{(type.IsGenericTypeDefinition ? $"<{string.Join(", ", type.GetGenericArguments().Select(a => a.Name))}>" : "")}";

    private static string Plain(Type type)
    {
        string name = type.Name;
        int tick = name.IndexOf('`', StringComparison.Ordinal);
        string own = tick < 0 ? name : name[..tick];
        return type is { IsNested: true, DeclaringType: { } outer } ? $"{Plain(outer)}.{own}" : own;
    }

    private static string Constraints(Type[] arguments) =>
        string.Concat(arguments.Where(a => a.IsGenericParameter).Select(Constraint));

    private static string Constraint(Type argument)
    {
        GenericParameterAttributes kind = argument.GenericParameterAttributes;
        bool isStruct = kind.HasFlag(GenericParameterAttributes.NotNullableValueTypeConstraint);
        IEnumerable<string> all =
        [
            .. kind.HasFlag(GenericParameterAttributes.ReferenceTypeConstraint) ? ["class"] : Array.Empty<string>(),
            .. isStruct ? ["struct"] : Array.Empty<string>(),
            .. argument.GetGenericParameterConstraints().Where(c => c != typeof(ValueType)).Select(Text),
            .. kind.HasFlag(GenericParameterAttributes.DefaultConstructorConstraint) && !isStruct
                ? ["new()"]
                : Array.Empty<string>(),
        ];
        string list = string.Join(", ", all);
        return list.Length > 0 ? $" where {argument.Name} : {list}" : "";
    }
}
