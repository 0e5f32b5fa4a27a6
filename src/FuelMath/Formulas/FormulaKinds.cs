namespace FuelMath.Formulas;

/// <summary>
/// The kinds of quantity in formulas. Their ranges are wider than in any fuel system, so a number outside is a mistake
/// of units. Source: [Common-practice] limits of our own.
/// </summary>
internal static class FormulaKinds
{
    internal static FormulaKind Number { get; } = new(UnitTable.Ratio, "1", -1e12, 1e12);

    internal static FormulaKind Fraction { get; } = new(UnitTable.Ratio, "%", 0, 1);

    internal static FormulaKind Length { get; } = new(UnitTable.Length, "mm", 1e-6, 1e6);

    internal static FormulaKind Altitude { get; } = new(UnitTable.Length, "m", -1e4, 1e5);

    internal static FormulaKind Roughness { get; } = new(UnitTable.Length, "um", 0, 0.1);

    internal static FormulaKind Area { get; } = new(UnitTable.Area, "mm2", 1e-12, 1);

    internal static FormulaKind Volume { get; } = new(UnitTable.Volume, "L", 0, 1e3);

    internal static FormulaKind SmallVolume { get; } = new(UnitTable.Volume, "mL", 0, 1e3);

    internal static FormulaKind ChamberVolume { get; } = new(UnitTable.Volume, "cm3", 0, 1e3);

    internal static FormulaKind Mass { get; } = new(UnitTable.Mass, "mg", 0, 1e3);

    internal static FormulaKind Density { get; } = new(UnitTable.Density, "kg/m3", 1, 1e4);

    internal static FormulaKind Speed { get; } = new(UnitTable.Speed, "m/s", 0, 1e4);

    internal static FormulaKind VolumeFlow { get; } = new(UnitTable.VolumeFlow, "L/h", 0, 1);

    internal static FormulaKind InjectorFlow { get; } = new(UnitTable.VolumeFlow, "cm3/min", 0, 1);

    internal static FormulaKind MassFlow { get; } = new(UnitTable.MassFlow, "g/s", 0, 1e4);

    internal static FormulaKind FuelFlow { get; } = new(UnitTable.MassFlow, "kg/h", 0, 1e4);

    internal static FormulaKind DifferentialPressure { get; } = new(UnitTable.PressureDifference, "kPa", 0, 1e9);

    internal static FormulaKind GaugePressure { get; } = new(UnitTable.GaugePressure, "kPa gauge", -1.1e5, 1e9);

    internal static FormulaKind AbsolutePressure { get; } = new(UnitTable.AbsolutePressure, "kPa absolute", 1, 1e9);

    internal static FormulaKind Stress { get; } = new(UnitTable.PressureDifference, "MPa", 0, 1e11);

    internal static FormulaKind BulkModulus { get; } = new(UnitTable.PressureDifference, "MPa", 1e6, 1e12);

    internal static FormulaKind DynamicViscosity { get; } = new(UnitTable.DynamicViscosity, "mPa s", 1e-7, 1e3);

    internal static FormulaKind KinematicViscosity { get; } = new(UnitTable.KinematicViscosity, "mm2/s", 1e-8, 1);

    internal static FormulaKind Temperature { get; } = new(UnitTable.Temperature, "degC", 1, 5000);

    internal static FormulaKind TemperatureDifference { get; } = new(UnitTable.TemperatureDifference, "K", -5000, 5000);

    internal static FormulaKind Time { get; } = new(UnitTable.Duration, "ms", 0, 1e6);

    internal static FormulaKind Seconds { get; } = new(UnitTable.Duration, "s", 0, 1e9);

    internal static FormulaKind Frequency { get; } = new(UnitTable.Frequency, "Hz", 0, 1e6);

    internal static FormulaKind RotationalSpeed { get; } = new(UnitTable.RotationalSpeed, "rpm", 0, 1e5);

    internal static FormulaKind Power { get; } = new(UnitTable.Power, "W", 0, 1e9);

    internal static FormulaKind Consumption { get; } = new(UnitTable.BrakeSpecificFuelConsumption, "g/kWh", 0, 1e-4);

    internal static FormulaKind SpecificEnergy { get; } = new(UnitTable.SpecificEnergy, "MJ/kg", 0, 1e9);

    internal static FormulaKind SpecificHeat { get; } = new(UnitTable.SpecificHeatCapacity, "kJ/(kg K)", 1, 1e6);

    internal static FormulaKind Force { get; } = new(UnitTable.Force, "N", 0, 1e6);

    internal static FormulaKind Voltage { get; } = new(UnitTable.Voltage, "V", 0, 1e4);

    internal static FormulaKind Current { get; } = new(UnitTable.Current, "A", 0, 1e5);

    internal static FormulaKind Resistance { get; } = new(UnitTable.Resistance, "ohm", 0, 1e9);

    internal static FormulaKind Celsius { get; } =
        Own(
            "temperature in degrees Celsius",
            "degC",
            -273.15,
            5000,
            "degC",
            new Unit("K", 1, 1, -273.15),
            new Unit("degF", 5, 9, -32)
        );

    internal static FormulaKind Angle { get; } =
        Own("angle", "deg", 0, Math.PI, "rad", new Unit("deg", Math.PI, 180, 0));

    internal static FormulaKind Resistivity { get; } =
        Own("resistivity", "ohm mm2/m", 1e-12, 1, "ohm m", new Unit("ohm mm2/m", 1, 1e6, 0));

    internal static FormulaKind TemperatureCoefficient { get; } = Own("temperature coefficient", "1/K", 0, 1, "1/K");

    internal static FormulaKind Compressibility { get; } =
        Own("compressibility", "1/GPa", 0, 1e-6, "1/Pa", new Unit("1/GPa", 1, 1e9, 0));

    internal static FormulaKind Compliance { get; } =
        Own("compliance", "cm3/bar", 0, 1, "m3/Pa", new Unit("cm3/bar", 1, 1e11, 0));

    internal static FormulaKind Swelling { get; } =
        Own("swelling", "%/bar", 0, 1e-3, "1/Pa", new Unit("%/bar", 1, 1e7, 0));

    internal static FormulaKind GasAmount { get; } =
        Own("pressure times volume of gas", "bar cm3", 0, 1e9, "Pa m3", new Unit("bar cm3", 1, 10, 0));

    internal static FormulaKind Conductance { get; } =
        Own(
            "flow for each unit of pressure",
            "cm3/(min bar)",
            0,
            1,
            "m3/(s Pa)",
            new Unit("cm3/(min bar)", 1, 6e12, 0)
        );

    internal static FormulaKind RootConductance { get; } =
        Own("flow for the root of a unit of pressure", "m3/(s Pa^0.5)", 0, 1, "m3/(s Pa^0.5)");

    internal static FormulaKind PressureSlope { get; } =
        Own("change of pressure with flow", "kPa/(L/min)", 0, 1e12, "Pa s/m3", new Unit("kPa/(L/min)", 6e7, 1, 0));

    internal static FormulaKind PressurePerSquareFlow { get; } =
        Own("pressure over the square of flow", "Pa s2/m6", 1, 1e20, "Pa s2/m6");

    internal static FormulaKind PerVolume { get; } = Own("linear coefficient of a filter", "1/m3", 0, 1e18, "1/m3");

    internal static FormulaKind PerFourthPower { get; } =
        Own("quadratic coefficient of a passage", "1/m4", 0, 1e18, "1/m4");

    internal static FormulaKind HeatLoss { get; } =
        Own("heat for each kelvin in a unit of time", "W/K", 1e-6, 1e9, "W/K");

    internal static FormulaKind HeatCapacity { get; } =
        Own("heat capacity", "kJ/K", 1e-3, 1e12, "J/K", new Unit("kJ/K", 1e3, 1, 0));

    private static FormulaKind Own(
        string name,
        string customary,
        double minimum,
        double maximum,
        string siUnit,
        params Unit[] others
    ) => new(new UnitKind(name, false, [new Unit(siUnit, 1, 1, 0), .. others]), customary, minimum, maximum);
}
