using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Calls;

/// <summary>
/// Calls public members with ordinary and extreme arguments: numbers, quantities and texts from lists, objects of the library
/// from a pool that begins with the bundled systems and grows by what calls return.
/// </summary>
internal sealed partial class Caller(int seed)
{
    private const int MostOfAType = 24;
    private const int MostAttempts = 3;
    private const int MostNames = 100;
    private const int LongestName = 20;

    private static readonly double[] Extreme =
    [
        0,
        -0.0,
        double.NaN,
        double.PositiveInfinity,
        double.NegativeInfinity,
        double.MaxValue,
        -double.MaxValue,
        double.Epsilon,
        1e-310,
        1e-300,
        1e300,
        1e154,
        -1e-12,
        -1,
    ];

    private static readonly double[] Ordinary = [1, 0.5, 2, 3, 0.1, 10, 100, 0.01, 1e-3, 300, 1e5];
    private static readonly int[] Counts = [0, 1, 2, 3, 4, -1, 7, 50];
    private static readonly string[] Texts =
    [
        "a",
        "tank",
        "pump",
        "3 bar",
        "E30",
        "",
        "0.0",
        "x\ny",
        "no such name",
        "$.a",
    ];

    private readonly Random random = new(seed);
    private readonly Dictionary<Type, List<object>> pool = [];
    private readonly List<string> names = [];
    private double extremes;

    /// <summary>Adds an object and all that its public properties lead to.</summary>
    internal void Keep(object? value, int depth = 6)
    {
        if (value is null || depth == 0)
        {
            return;
        }

        Type type = value.GetType();
        if (type.Assembly == House.PublicApi.Library)
        {
            if (!Add(value))
            {
                return;
            }

            foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
            {
                if (property.GetIndexParameters().Length == 0)
                {
                    try
                    {
                        object? held = property.GetValue(value);
                        Keep(held, depth - 1);
                        KeepName(held as string);
                    }
                    catch (TargetInvocationException)
                    {
                        // What a property refuses is looked at where it is called.
                    }
                }
            }
        }
        else if (value is IEnumerable many and not string)
        {
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>) && IsDefault(value))
            {
                return;
            }

            foreach (object? one in many.Cast<object?>().Take(4))
            {
                Keep(one, depth - 1);
            }
        }
    }

    private void KeepName(string? name)
    {
        if (name is { Length: > 0 and <= LongestName } && names.Count < MostNames && !names.Contains(name))
        {
            names.Add(name);
        }
    }

    /// <summary>Calls a method some times, with ordinary arguments first.</summary>
    internal IEnumerable<CallOutcome> Call(MethodBase method, int times)
    {
        MethodBase? closed = Closed(method);
        if (closed is null)
        {
            yield break;
        }

        for (int i = 0; i < times; i++)
        {
            extremes = i < times / 2 ? 0.05 : 0.5;
            if (Try(method, closed) is { } outcome)
            {
                yield return outcome;
            }
        }
    }

    /// <summary>Calls a method with ordinary arguments, and a null among the elements of one list.</summary>
    internal IEnumerable<CallOutcome> CallWithNullIn(MethodBase method, int parameter, int times)
    {
        extremes = 0;
        for (int i = 0; i < times; i++)
        {
            if (Try(method, method, (i, type) => i == parameter ? (true, WithNull(type)) : default) is { } outcome)
            {
                yield return outcome;
            }
        }
    }

    /// <summary>Calls a method with ordinary arguments, and null for one of them.</summary>
    internal IEnumerable<CallOutcome> CallWithNull(MethodBase method, int parameter, int times)
    {
        extremes = 0;
        for (int i = 0; i < times; i++)
        {
            if (Try(method, method, (i, _) => (i == parameter, null)) is { } outcome)
            {
                yield return outcome;
            }
        }
    }

    /// <param name="given">For a parameter and its type, whether its argument is given, and which.</param>
    private CallOutcome? Try(MethodBase method, MethodBase closed, Func<int, Type, (bool, object?)>? given = null)
    {
        object? target = null;
        if (
            !closed.IsStatic
            && !closed.IsConstructor
            && (
                !Make(closed.DeclaringType!, 0, out target)
                || target is null
                || !closed.DeclaringType!.IsInstanceOfType(target)
            )
        )
        {
            return null;
        }

        ParameterInfo[] parameters = closed.GetParameters();
        object?[] arguments = new object?[parameters.Length];
        for (int i = 0; i < parameters.Length; i++)
        {
            if (given?.Invoke(i, parameters[i].ParameterType) is (true, var argument))
            {
                arguments[i] = argument;
            }
            else if (!Make(parameters[i].ParameterType, 0, out arguments[i]))
            {
                return null;
            }
        }

        CallOutcome outcome = CallOutcome.Of(method, closed, target, arguments);
        if (outcome.Result is { } result && result.GetType().Assembly == House.PublicApi.Library)
        {
            Add(result);
        }

        return outcome;
    }

    /// <summary>A list of an object, where one can be made, and a null.</summary>
    private object WithNull(Type list)
    {
        Type element = Element(list)!;
        Array items = Make(element, 1, out object? one)
            ? Array.CreateInstance(element, 2)
            : Array.CreateInstance(element, 1);
        items.SetValue(one, 0);
        return InList(list, element, items);
    }

    private static MethodBase? Closed(MethodBase method)
    {
        if (
            method.DeclaringType!.ContainsGenericParameters
            || method.GetParameters().Any(p => (p.ParameterType.IsByRef && !p.IsIn) || p.ParameterType.IsByRefLike)
            || method.DeclaringType!.IsInterface
        )
        {
            return null;
        }

        if (method is MethodInfo { IsGenericMethodDefinition: true } generic)
        {
            try
            {
                return generic.MakeGenericMethod([.. generic.GetGenericArguments().Select(_ => typeof(Real))]);
            }
            catch (ArgumentException)
            {
                return null;
            }
        }

        return method;
    }

    private bool Add(object value)
    {
        bool fresh = false;
        for (
            Type? type = value.GetType();
            type is not null && type != typeof(object) && type != typeof(ValueType);
            type = type.BaseType
        )
        {
            if (!pool.TryGetValue(type, out List<object>? list))
            {
                pool[type] = list = [];
            }

            if (list.Count < MostOfAType)
            {
                list.Add(value);
                fresh = true;
            }
            else if (random.Next(8) == 0)
            {
                list[random.Next(MostOfAType / 2, MostOfAType)] = value;
            }
        }

        return fresh;
    }

    private static bool IsDefault(object array) => (bool)array.GetType().GetProperty("IsDefault")!.GetValue(array)!;

    private T One<T>(T[] list) => list[random.Next(list.Length)];

    private double Number() =>
        random.NextDouble() < extremes ? One(Extreme)
        : random.Next(3) == 0 ? One(Ordinary) * random.NextDouble()
        : One(Ordinary);

    /// <summary>An argument of a type; false where none can be made.</summary>
    private bool Make(Type type, int depth, out object? value)
    {
        value = null;
        if (depth > 3)
        {
            return false;
        }

        Type plain = Nullable.GetUnderlyingType(type) ?? type;
        if (plain != type && random.Next(4) == 0)
        {
            return true;
        }

        if (plain.IsByRef)
        {
            return Make(plain.GetElementType()!, depth, out value);
        }

        value =
            plain == typeof(double) ? Number()
            : plain == typeof(float) ? (float)Number()
            : plain == typeof(int) ? One(Counts)
            : plain == typeof(long) ? (long)One(Counts)
            : plain == typeof(ulong) ? (ulong)random.Next(9)
            : plain == typeof(bool) ? random.Next(2) == 0
            : plain == typeof(char) ? One(new[] { 'a', ',', '\n' })
            : plain == typeof(string) ? Text()
            : plain == typeof(DateOnly) ? new DateOnly(2026, 11, 20)
            : plain == typeof(CancellationToken) ? default(CancellationToken)
            : plain == typeof(Real) ? new Real(Number())
            : plain.IsEnum ? Choice(plain)
            : null;
        if (value is not null)
        {
            return true;
        }

        if (plain == typeof(IFormatProvider) || plain == typeof(CultureInfo))
        {
            value = CultureInfo.InvariantCulture;
            return true;
        }

        if (plain == typeof(object))
        {
            value = One(new object[] { 1, "a", 2.0 });
            return true;
        }

        if (typeof(IQuantity).IsAssignableFrom(plain) && plain.IsValueType)
        {
            return Quantity(plain, out value);
        }

        if (Element(plain) is { } element)
        {
            return List(plain, element, depth, out value);
        }

        if (plain.Assembly != House.PublicApi.Library)
        {
            // No calls back, no streams: null, which most refuse.
            return !plain.IsValueType;
        }

        if (random.NextDouble() < extremes / 10 && !plain.IsValueType)
        {
            return true;
        }

        if (pool.TryGetValue(plain, out List<object>? known) && (depth > 1 || random.Next(6) > 0))
        {
            value = known[random.Next(known.Count)];
            return true;
        }

        return Build(plain, depth, out value) || (known is not null && Make(plain, 2, out value));
    }

    private string Text() => names.Count > 0 && random.Next(2) == 0 ? names[random.Next(names.Count)] : One(Texts);

    private object Choice(Type type)
    {
        Array all = Enum.GetValues(type);
        return random.NextDouble() < extremes / 5 ? Enum.ToObject(type, 99) : all.GetValue(random.Next(all.Length))!;
    }

    private bool Quantity(Type type, out object? value)
    {
        IQuantity zero = (IQuantity)Activator.CreateInstance(type)!;
        UnitInfo[] units = zero.QuantityInfo.UnitInfos;
        Enum unit = units[random.Next(units.Length)].Value;
        double number = Number();
        value = null;
        if (double.IsFinite(number))
        {
            try
            {
                value = UnitsNet.Quantity.From(number, unit);
            }
            catch (OverflowException)
            {
                // Power is a decimal number in the unit library.
            }
        }

        value ??= zero;
        return true;
    }

    /// <summary>What the elements of a list are; null for what is no list.</summary>
    internal static Type? Element(Type type) =>
        type.IsArray ? type.GetElementType()
        : type.IsGenericType
        && type.GetGenericTypeDefinition() is var whole
        && (
            whole == typeof(IEnumerable<>)
            || whole == typeof(IReadOnlyList<>)
            || whole == typeof(IReadOnlyCollection<>)
            || whole == typeof(IList<>)
            || whole == typeof(ImmutableArray<>)
        )
            ? type.GetGenericArguments()[0]
        : null;

    private bool List(Type type, Type element, int depth, out object? value)
    {
        value = null;
        if (element.IsGenericParameter || element.IsPointer)
        {
            return false;
        }

        int count = random.Next(4) == 0 ? random.Next(2) : random.Next(2, 5);
        var items = Array.CreateInstance(element, count);
        for (int i = 0; i < count; i++)
        {
            if (!Make(element, depth + 1, out object? one))
            {
                return false;
            }

            items.SetValue(one, i);
        }

        if (element == typeof(double) && random.Next(3) > 0)
        {
            Array.Sort((double[])items);
        }

        value = InList(type, element, items);
        return true;
    }

    private static object InList(Type type, Type element, Array items) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)
            ? typeof(ImmutableArray)
                .GetMethods()
                .Single(m => m.Name == "Create" && m.GetParameters() is [{ ParameterType.IsArray: true }])
                .MakeGenericMethod(element)
                .Invoke(null, [items])!
            : items;

    /// <summary>By one of the public ways to make it.</summary>
    private bool Build(Type type, int depth, out object? value)
    {
        value = null;
        if (type.IsAbstract && !type.IsSealed && type.GetConstructors().Length == 0 && !pool.ContainsKey(type))
        {
            return false;
        }

        MethodBase[] ways =
        [
            .. type.IsAbstract ? [] : type.GetConstructors(),
            .. type.GetMethods(BindingFlags.Public | BindingFlags.Static)
                .Where(m => m.ReturnType == type && !m.IsGenericMethod && !m.IsSpecialName),
        ];
        for (int attempt = 0; attempt < MostAttempts && ways.Length > 0; attempt++)
        {
            MethodBase way = One(ways);
            ParameterInfo[] parameters = way.GetParameters();
            object?[] arguments = new object?[parameters.Length];
            bool made = true;
            for (int i = 0; made && i < parameters.Length; i++)
            {
                made = Make(parameters[i].ParameterType, depth + 1, out arguments[i]);
            }

            if (!made)
            {
                continue;
            }

            try
            {
                value = way is ConstructorInfo constructor
                    ? constructor.Invoke(BindingFlags.DoNotWrapExceptions, null, arguments, null)
                    : way.Invoke(null, BindingFlags.DoNotWrapExceptions, null, arguments, null);
                if (value is not null)
                {
                    Add(value);
                    return true;
                }
            }
            catch (Exception)
            {
                // What it throws is looked at where it is called itself.
            }
        }

        return false;
    }
}
