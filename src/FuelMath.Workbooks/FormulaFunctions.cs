using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>Functions of cells made from formulas; their texts come from the description of the formula.</summary>
internal static class FormulaFunctions
{
    /// <summary>Short names, in the order of the work, each with its formula.</summary>
    private static readonly (string Name, string Formula)[] Named =
    [
        ("FuelFlowAtPressure", "Orifice.CarriedVolumeFlow"),
        ("FuelMassFlowAtPressure", "Orifice.CarriedMassFlow"),
        ("PulseWidth", "PulseTiming.PulseWidth"),
        ("EffectiveWidth", "Pulse.EffectiveWidth"),
        ("DutyCycle", "Pulse.DutyCycle"),
        ("StaticFlowForDuty", "PulseTiming.NeededStaticFlow"),
        ("AirMass", "EngineAir.AirMassPerEvent"),
        ("FuelMass", "EngineAir.FuelMass"),
        ("FuelLambda", "Combustion.Lambda"),
        ("StoichiometricRatio", "Combustion.StoichiometricAirFuelRatio"),
        ("FuelForPower", "EngineAir.FuelFlowFromPower"),
        ("BlendContent", "TankBalance.ContentAfter"),
        ("BlendAddition", "TankBalance.AddedVolume"),
        ("PremixOil", "PremixBalance.Oil"),
        ("FuelColumn", "Hydrostatics.ColumnPressure"),
        ("AwgDiameter", "WireResistance.AwgDiameter"),
        ("PumpPower", "PumpPower.Hydraulic"),
        ("FuelVaporPressure", "VaporPressure.FromReid"),
        ("MarginAboveBoiling", "Suction.PressureAboveBoiling"),
        ("HeldPressure", "BypassValve.HeldPressure"),
    ];

    internal static IEnumerable<SheetFunction> All =>
        [
            .. Named.Select(n => Of(n.Name, FormulaCatalog.Named(n.Formula))),
            .. new[] { SheetFormulas.PulseMass, SheetFormulas.HoseLoss, SheetFormulas.WireDrop }.Select(f =>
                Of(f.Name, f)
            ),
        ];

    internal static SheetFunction Of(string name, FormulaInfo formula)
    {
        ImmutableArray<CellNumber> numbers = [.. formula.Arguments.Select(a => new CellNumber(a.Name, a.Quantity))];
        return new(
            name,
            formula.Summary,
            [.. formula.Arguments.Select(Argument)],
            $"{formula.Result.Symbol.Meaning}, in {Unit(formula.Result)}",
            formula.Result.CustomaryUnit,
            string.Join("; ", formula.Sources),
            formula,
            (IReadOnlyList<object?> _, IFormatProvider? writer, out CellError? error) =>
            {
                error = null;
                return cells => Calculate(formula, numbers, cells, writer);
            }
        );
    }

    internal static string Unit(FormulaQuantity quantity) =>
        quantity.CustomaryUnit == "1" ? "a pure number" : quantity.CustomaryUnit;

    private static SheetFunctionArgument Argument(FormulaInfo.Argument argument)
    {
        FormulaQuantity quantity = argument.Quantity;
        string Show(double si) => CellNumber.Show(quantity.FromSi(si, quantity.CustomaryUnit));
        return new(
            argument.Name,
            $"{quantity.Symbol.Meaning}, in {Unit(quantity)}; from {Show(argument.Minimum)} to {Show(argument.Maximum)}",
            quantity.CustomaryUnit,
            false
        );
    }

    private static object Calculate(
        FormulaInfo formula,
        ImmutableArray<CellNumber> numbers,
        IReadOnlyList<object?> cells,
        IFormatProvider? writer
    )
    {
        double[] arguments = new double[numbers.Length];
        for (int i = 0; i < arguments.Length; i++)
        {
            object read = numbers[i].Read(cells[i], writer);
            if (read is not double number)
            {
                return read;
            }

            arguments[i] = number;
        }

        return formula.TryCalculate(
            FormulaInfo.CallUnits.Customary,
            arguments,
            out double value,
            out FormulaRefusal? refusal
        )
            ? value
            : CellError.Number(refusal!.Message);
    }
}
