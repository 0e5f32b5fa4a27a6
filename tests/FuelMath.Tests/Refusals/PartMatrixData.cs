using System.Reflection;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Refusals;

/// <summary>Which types are parts with a name, and what is wrong for a parameter.</summary>
internal static class PartMatrixData
{
    private const int NoChoice = 99;

    /// <summary>Units of the trade, one for each kind of quantity.</summary>
    private static readonly Dictionary<Type, Enum> Units = new()
    {
        [typeof(Pressure)] = PressureUnit.Bar,
        [typeof(VolumeFlow)] = VolumeFlowUnit.LiterPerHour,
        [typeof(MassFlow)] = MassFlowUnit.GramPerSecond,
        [typeof(Volume)] = VolumeUnit.CubicCentimeter,
        [typeof(Mass)] = MassUnit.Gram,
        [typeof(Length)] = LengthUnit.Millimeter,
        [typeof(Area)] = AreaUnit.SquareMillimeter,
        [typeof(Density)] = DensityUnit.KilogramPerCubicMeter,
        [typeof(DynamicViscosity)] = DynamicViscosityUnit.MillipascalSecond,
        [typeof(KinematicViscosity)] = KinematicViscosityUnit.Centistokes,
        [typeof(Temperature)] = TemperatureUnit.DegreeCelsius,
        [typeof(ElectricPotential)] = ElectricPotentialUnit.Volt,
        [typeof(ElectricCurrent)] = ElectricCurrentUnit.Ampere,
        [typeof(ElectricResistance)] = ElectricResistanceUnit.Milliohm,
        [typeof(Duration)] = DurationUnit.Millisecond,
        [typeof(RotationalSpeed)] = RotationalSpeedUnit.RevolutionPerMinute,
        [typeof(Power)] = PowerUnit.Watt,
        [typeof(Ratio)] = RatioUnit.Percent,
        [typeof(Angle)] = AngleUnit.Degree,
        [typeof(Speed)] = SpeedUnit.MeterPerSecond,
    };

    private static readonly double[] Numbers = [-1, 0, -400, 1e7];

    /// <summary>
    /// A type whose objects have a name; a formula, a table by a caller's own numbers or of results, and an input of a budget are
    /// no parts.
    /// </summary>
    internal static bool IsNamed(Type type) =>
        type.Namespace != "FuelMath.Formulas"
        && type != typeof(Curve)
        && type != typeof(Grid)
        && type != typeof(SheetTable)
        && type != typeof(SheetTable.Column)
        && type.Name != "Input"
        && type.GetProperty("Name")?.PropertyType == typeof(string)
        && !(type.IsGenericType && type.GetGenericTypeDefinition() == typeof(QuantityKind<>));

    /// <summary>The names of an object and of what its properties hold, as the fluid of a pump.</summary>
    internal static IEnumerable<string> NamesOf(object? value) =>
        value is null
            ? []
            :
            [
                .. value
                    .GetType()
                    .GetProperties()
                    .Where(p => p.GetIndexParameters().Length == 0 && p.PropertyType.GetProperty("Name") is not null)
                    .Select(p => NameOf(p.GetValue(value)))
                    .Append(NameOf(value))
                    .OfType<string>(),
            ];

    private static string? NameOf(object? value) =>
        value is not null && value.GetType().GetProperty("Name") is { } name && name.PropertyType == typeof(string)
            ? (string?)name.GetValue(value)
            : null;

    /// <summary>Values that a parameter may refuse.</summary>
    internal static IEnumerable<object> Wrong(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return Units.TryGetValue(type, out Enum? unit) ? Numbers.Select(n => (object)Quantity.From(n, unit))
            : type == typeof(int) ? [-1, 0, 1_000_000]
            : type.IsEnum ? [Enum.ToObject(type, NoChoice)]
            : type == typeof(string) && parameter.Name != "name" ? ["no such thing", ""]
            : [];
    }
}
