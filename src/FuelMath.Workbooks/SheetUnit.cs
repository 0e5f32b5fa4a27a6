using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>The unit of a cell, with conversion from and to SI units.</summary>
internal sealed class SheetUnit
{
    private readonly FormulaQuantity quantity;

    private SheetUnit(string name, FormulaQuantity quantity) => (Name, this.quantity) = (name, quantity);

    internal static SheetUnit None { get; } = new("", FormulaQuantity.Number(new Symbol("x", "", "number")));

    internal static SheetUnit Percent { get; } = Of("%", "%", QuantityKinds.Ratio, new Symbol("x", "", "share"));

    internal static SheetUnit Gauge { get; } = Pressure("bar gauge");

    internal static SheetUnit Absolute { get; } = Pressure("bar absolute");

    internal static SheetUnit Difference { get; } = Pressure("bar");

    internal static SheetUnit Celsius { get; } =
        Of("degC", "degC", QuantityKinds.Temperature, new Symbol("T", "K", "temperature"));

    internal static SheetUnit Speed { get; } =
        Of("rpm", "rpm", QuantityKinds.RotationalSpeed, new Symbol("n", "rad/s", "speed"));

    internal static SheetUnit Density { get; } =
        Of("kg/m3", "kg/m3", QuantityKinds.Density, new Symbol("rho", "kg/m3", "density"));

    internal static SheetUnit Milliseconds { get; } =
        Of("ms", "ms", QuantityKinds.Duration, new Symbol("t", "s", "time"));

    internal static SheetUnit Milligrams { get; } = Of("mg", "mg", QuantityKinds.Mass, new Symbol("m", "kg", "mass"));

    internal static SheetUnit GramsPerSecond { get; } =
        Of("g/s", "g/s", QuantityKinds.MassFlow, new Symbol("m", "kg/s", "mass flow"));

    internal static SheetUnit LitersPerHour { get; } =
        Of("L/h", "L/h", QuantityKinds.VolumeFlow, new Symbol("Q", "m3/s", "volume flow"));

    internal static SheetUnit CubicCentimeters { get; } =
        Of("cm3", "cm3", QuantityKinds.Volume, new Symbol("V", "m3", "volume"));

    internal static SheetUnit SquareMillimeters { get; } =
        Of("mm2", "mm2", QuantityKinds.Area, new Symbol("A", "m2", "area"));

    internal static SheetUnit Newtons { get; } = Of("N", "N", QuantityKinds.Force, new Symbol("F", "N", "force"));

    internal string Name { get; }

    /// <summary>The value of a cell in SI units.</summary>
    internal SpreadsheetText Read(string reference) =>
        quantity.ToSi(SpreadsheetText.Input(reference), quantity.CustomaryUnit);

    /// <summary>A number in SI units converted to the unit of the cell.</summary>
    internal SpreadsheetText Show(SpreadsheetText si) => quantity.FromSi(si, quantity.CustomaryUnit);

    /// <summary>A number in SI units converted to the unit of the cell.</summary>
    internal double Show(double si) => quantity.FromSi(si, quantity.CustomaryUnit);

    private static SheetUnit Pressure(string name) =>
        Of(name, "bar", QuantityKinds.PressureDifference, new Symbol("p", "Pa", "pressure"));

    private static SheetUnit Of<TQuantity>(string name, string unit, QuantityKind<TQuantity> kind, Symbol symbol)
        where TQuantity : struct => new(name, FormulaQuantity.Of(symbol, kind, unit));
}
