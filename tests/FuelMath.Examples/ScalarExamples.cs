using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Examples;

public sealed class ScalarExamples
{
    /// <summary>Differences of numbers that agree in many digits, which single precision does not hold.</summary>
    private static readonly string[] Cancelling = ["PressureDecay.LaminarFallTime", "TankHeating.TemperatureAfter"];

    [Fact]
    public void OneFormulaFourReadings()
    {
        #region Readings
        // As a number: the Darcy friction factor at Re 100 000 in a pipe of relative roughness 0.0001.
        Real plain = Friction.ColebrookFactor(new Real(1e5), new Real(1e-4)); // 0.01851

        // With its exact slope by the Reynolds number.
        Dual<Real> sloped = Friction.ColebrookFactor(Dual<Real>.Variable(new Real(1e5)), new Real(1e-4));
        double slope = sloped.Slope.Value * 1e8; // -3.46 for each 100 000 000 of the Reynolds number

        // As many at once as the machine's vector holds.
        Lane many = Friction.ColebrookFactor(Lane.Of(1e5), Lane.Of(1e-4));

        // As its own working.
        Traced shown = Friction.ColebrookFactor(
            Traced.Input(Symbols.Reynolds, 1e5),
            Traced.Input(Symbols.RelativeRoughness, 1e-4)
        );
        #endregion

        Assert.Equal(0.0185138660774716, plain.Value, 1e-15);
        Assert.Equal(plain.Value, sloped.Value.Value);
        // The derivative from a root finder with 30 digits.
        Assert.Equal(-3.46021793971501e-8, slope / 1e8, 1e-20);
        Assert.Equal(plain.Value, many[0], 1e-15);
        Assert.Equal(plain.Value, shown.Value);
    }

    [Fact]
    public void AWorking()
    {
        #region Working
        Traced loss = Friction.PressureLoss(
            velocity: Traced.Input(Symbols.Velocity, 1.2),
            bore: Traced.Input(Symbols.Bore, 0.008),
            length: Traced.Input(Symbols.Length, 2.5),
            roughness: Traced.Input(Symbols.Roughness, 1.5e-6),
            density: Traced.Input(Symbols.Density, 740),
            dynamicViscosity: Traced.Input(Symbols.DynamicViscosity, 0.0115)
        );
        string text = loss.ToWorking().ToString();
        // ...
        // Re = rho * |v| * D / mu = 740 kg/m3 * |1.2 m/s| * 0.008 m / (0.0115 Pa s) = 617.739
        //     Reynolds number; [White-2003] section 1.6 (definition)
        // f = 64 / Re = 64 / 617.739 = 0.103604 (where Re < 2000)
        // ...
        #endregion

        Assert.Contains(
            "Re = rho * |v| * D / mu = 740 kg/m3 * |1.2 m/s| * 0.008 m / (0.0115 Pa s) = 617.739\n"
                + "    Reynolds number; [White-2003] section 1.6 (definition)\n"
                + "f = 64 / Re = 64 / 617.739 = 0.103604 (where Re < 2000)\n",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void AWorkingInAReadersUnits()
    {
        #region ReadersUnits
        FormulaInfo carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");
        Working working = carried.WorkingIn(
            ["cm3/min", "bar", "kg/m3", "bar", "kg/m3"],
            "cm3/min",
            [800, 3, 740, 4, 740]
        );
        string text = working.WithFigures(4).ToText(CultureInfo.InvariantCulture);
        // ...
        // Q0 = 800 cm3/min = 800 / 60000000 m3/s = 1.333E-05 m3/s
        // ...
        // Q = 1.540E-05 m3/s = 1.540E-05 * 60000000 cm3/min = 923.8 cm3/min
        #endregion

        Assert.Contains("Q0 = 800 cm3/min = 800 / 60000000 m3/s = 1.333E-05 m3/s\n", text, StringComparison.Ordinal);
        Assert.EndsWith(
            "Q = 1.540E-05 m3/s = 1.540E-05 * 60000000 cm3/min = 923.8 cm3/min\n",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void AReadingOfYourOwn()
    {
        #region OwnReading
        FormulaInfo loss = FormulaCatalog.Named("Friction.PressureLoss");
        double[] hose = [1.2, 0.008, 2.5, 1.5e-6, 740, 5e-4];

        double exact = loss.Calculate(FormulaInfo.CallUnits.Si, hose);
        SinglePrecision small = loss.At<SinglePrecision>([.. hose.Select(SinglePrecision.Of)]);
        (double here, float there) = (exact, small.Value); // 4750.8790 and 4750.8794 Pa
        #endregion

        // Some twenty operations, each rounded to 6e-8; the root of Colebrook's law is off by as much.
        Assert.InRange(Math.Abs((small.Value / exact) - 1), 1e-9, 20 * 6e-8);
    }

    /// <summary>Every listed formula, in single precision: within a thousandth at its example, where nothing cancels.</summary>
    [Fact]
    public void AReadingOfYourOwn_ReadsEveryFormula() =>
        Assert.All(
            FormulaCatalog.All.Where(f => !Cancelling.Contains(f.Name)),
            f =>
            {
                double exact = f.Calculate(FormulaInfo.CallUnits.Si, f.Example.Arguments.AsSpan());
                SinglePrecision small = f.At<SinglePrecision>([.. f.Example.Arguments.Select(SinglePrecision.Of)]);
                Assert.True(Math.Abs((small.Value / exact) - 1) < 1e-3, $"{f.Name}: {small.Value} for {exact}");
            }
        );
}
