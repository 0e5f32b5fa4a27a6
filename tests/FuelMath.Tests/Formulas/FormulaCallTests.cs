using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>Checked calls of listed formulas: units, ranges and refusals.</summary>
public sealed class FormulaCallTests
{
    private static readonly FormulaInfo Carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

    public static TheoryData<string> Names() => [.. FormulaCatalog.All.Select(f => f.Name)];

    /// <summary>800 cm3/min at 300 kPa are 800 times the root of 4/3 at 400 kPa, by hand 923.7604.</summary>
    [Fact]
    public void Calculate_InCustomaryUnits_TakesAndGivesThem() =>
        Close.Within(1e-9, 923.7604307, Carried.Calculate(FormulaInfo.CallUnits.Customary, 800, 300, 740, 400, 740));

    [Fact]
    public void Calculate_OutsideARange_NamesArgumentValueAndRangeInTheUnitsOfTheCall()
    {
        var error = Assert.Throws<FormulaRefusedException>(() =>
            Carried.Calculate(FormulaInfo.CallUnits.Customary, 800, 300, 740, -1, 740)
        );

        FormulaRefusal refusal = error.Refusal;
        Assert.Equal(FormulaRefusal.FormulaProblem.OutsideRange, refusal.Problem);
        Assert.Equal("differentialPressure", error.ParamName);
        Assert.Same(Carried.Arguments[3], refusal.Argument);
        Assert.Equal((-1.0, 0.0, 1e6, "kPa"), (refusal.Value, refusal.Minimum, refusal.Maximum, refusal.Unit));
        Words.Says("0 kPa, 1E+06 kPa, -1 kPa", error);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void TryCalculate_NotFinite_RefusesEachArgument(double bad)
    {
        foreach (FormulaInfo formula in FormulaCatalog.All)
        {
            for (int i = 0; i < formula.Arguments.Length; i++)
            {
                double[] arguments = [.. formula.Example.Arguments];
                arguments[i] = bad;

                Assert.False(
                    formula.TryCalculate(
                        FormulaInfo.CallUnits.Si,
                        arguments,
                        out double value,
                        out FormulaRefusal? refusal
                    )
                );
                Assert.Equal(0, value);
                Assert.Same(formula.Arguments[i], refusal!.Argument);
            }
        }
    }

    [Fact]
    public void TryCalculate_WrongCount_SaysHowManyAndWhich()
    {
        FormulaInfo velocity = FormulaCatalog.Named("Friction.Velocity");

        FormulaRefusal refusal = velocity.Check(FormulaInfo.CallUnits.Si, 1e-4)!;

        Assert.Equal(
            (FormulaRefusal.FormulaProblem.Count, 1.0, 2.0),
            (refusal.Problem, refusal.Value, refusal.Minimum)
        );
        Assert.Equal("Friction.Velocity must have 2 arguments (volumeFlow, bore); it has 1.", refusal.Message);
        Assert.Throws<FormulaRefusedException>(() => velocity.At<Real>([new Real(1)]));
    }

    [Fact]
    public void Check_BoundByAnotherArgument_SaysWhichAndWhatItIsHere()
    {
        FormulaInfo hoop = FormulaCatalog.Named("TubeElasticity.HoopStress");

        FormulaRefusal refusal = hoop.Check(FormulaInfo.CallUnits.Customary, 1, 8, 6, 7)!;

        Assert.Equal(FormulaRefusal.FormulaProblem.OutsideBound, refusal.Problem);
        Assert.Equal("outsideDiameter", refusal.Argument!.Name);
        Close.Within(1e-12, 8, refusal.Minimum);
        Close.Within(1e-12, 6, refusal.Value);
        Assert.Equal(
            "TubeElasticity.HoopStress: outsideDiameter must be above insideDiameter, here 8 mm; it was 6 mm.",
            refusal.Message
        );
    }

    [Theory]
    [InlineData("TankHeating.DrainingAdiabatic", new[] { 300, 100, 1e4, 10, 1001.0 }, "heatCapacity")]
    [InlineData("PulseTiming.NeededStaticFlow", new[] { 1e-3, 0.05, 1e-3, 0.02 }, "deadTime")]
    [InlineData("CurvedFriction.PressureLoss", new[] { 5, 0.01, 1, 0, 0.15, 750, 5e-4 }, "coilDiameter")]
    [InlineData("CurvedFriction.Factor", new[] { 1e6, 0, 0.05 }, "reynolds")]
    [InlineData("Friction.PressureLoss", new[] { 1, 0.01, 1, 0.001, 750, 5e-4 }, "roughness")]
    [InlineData("TubeElasticity.ThinWallPressure", new[] { 1e-3, 9e-3, 1e8 }, "insideDiameter")]
    public void Check_OutsideABound_Refuses(string name, double[] arguments, string argument)
    {
        FormulaRefusal refusal = FormulaCatalog.Named(name).Check(FormulaInfo.CallUnits.Si, arguments)!;

        Assert.Equal((FormulaRefusal.FormulaProblem.OutsideBound, argument), (refusal.Problem, refusal.Argument!.Name));
    }

    /// <summary>In range, but the target is what is added: a division by zero.</summary>
    [Fact]
    public void TryCalculate_NoFiniteResult_Refuses()
    {
        FormulaInfo added = FormulaCatalog.Named("TankBalance.AddedVolume");

        FormulaRefusal refusal = added.Check(FormulaInfo.CallUnits.Si, 0.1, 0.02, 0.3, 0.3)!;

        Assert.Equal(
            (FormulaRefusal.FormulaProblem.NoResult, (FormulaInfo.Argument?)null),
            (refusal.Problem, refusal.Argument)
        );
    }

    /// <summary>An edge that went to the customary unit and back is still the edge.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Check_AtTheEdgesInCustomaryUnits_IsInRange(string name)
    {
        FormulaInfo formula = FormulaCatalog.Named(name);
        for (int i = 0; i < formula.Arguments.Length; i++)
        {
            FormulaInfo.Argument argument = formula.Arguments[i];
            foreach (double edge in (double[])[argument.Minimum, argument.Maximum])
            {
                double[] arguments = Customary(formula, formula.Example.Arguments);
                arguments[i] = argument.Quantity.FromSi(edge, argument.Quantity.CustomaryUnit);

                Assert.NotEqual(
                    FormulaRefusal.FormulaProblem.OutsideRange,
                    formula.Check(FormulaInfo.CallUnits.Customary, arguments)?.Problem
                );
            }
        }
    }

    /// <summary>A checked call in SI units has the bits of the formula; one in customary units its value.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Calculate_AtUsualPoints_IsTheFormulaInEitherUnits(string name)
    {
        FormulaCase formula = FormulaCase.Named(name);
        FormulaArbitraries.ForAll(
            formula.Arity,
            fractions =>
            {
                double[] point = formula.Point(fractions);
                if (formula.Info.Check(FormulaInfo.CallUnits.Si, point) is not null)
                {
                    return;
                }

                double direct = formula.Real(point);
                Assert.Equal(direct, formula.Info.Calculate(FormulaInfo.CallUnits.Si, point));
            }
        );
    }

    /// <summary>The slope by customary units, against the difference of two calls.</summary>
    [Fact]
    public void Slope_InCustomaryUnits_IsThatOfTheCalls()
    {
        double slope = Carried.Slope(FormulaInfo.CallUnits.Customary, 3, 800, 300, 740, 400, 740);

        // By hand: half of the flow over the pressure, 923.7604307 / 800.
        Close.Within(1e-9, 1.154700538, slope);
        Assert.Throws<ArgumentOutOfRangeException>(() => Carried.Slope(FormulaInfo.CallUnits.Si, 5, 1, 1, 1, 1, 1));
    }

    /// <summary>A temperature has an offset that a slope must not count: one kelvin is one degree.</summary>
    [Fact]
    public void Slope_OfATemperature_KnowsNoOffset()
    {
        FormulaInfo settled = FormulaCatalog.Named("TankHeating.SettledTemperature");

        Close.Within(1e-12, 1, settled.Slope(FormulaInfo.CallUnits.Customary, 0, 20, 100, 5));
        Close.Within(1e-12, 40, settled.Calculate(FormulaInfo.CallUnits.Customary, 20, 100, 5));
    }

    [Fact]
    public void Named_Unknown_Refuses()
    {
        Assert.Null(FormulaCatalog.Find("Friction.Nothing"));
        Assert.Equal(
            "name",
            Assert.Throws<ArgumentException>(() => FormulaCatalog.Named("Friction.Nothing")).ParamName
        );
    }

    private static double[] Customary(FormulaInfo formula, IReadOnlyList<double> si) =>
        [.. si.Select((x, i) => formula.Arguments[i].Quantity.FromSi(x, formula.Arguments[i].Quantity.CustomaryUnit))];
}
