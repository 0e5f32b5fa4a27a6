using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Tests.Scalars;

/// <summary>Workings in a reader's units, to a reader's figures, as text, Markdown and LaTeX.</summary>
public sealed class WorkingFormTests
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    private static readonly FormulaInfo Carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

    private static readonly string[] Units = ["cm3/min", "bar", "kg/m3", "kPa", "kg/m3"];

    /// <summary>By hand: 800 times the root of 4/3 is 923.760.</summary>
    [Fact]
    public void ToText_InAReadersUnits_ConvertsInLinesOfItsOwn()
    {
        Working working = Carried.WorkingIn(Units, "cm3/min", 800, 3, 740, 400, 740);

        Assert.Equal(
            [
                "Q0 = 800 cm3/min (rated volume flow)",
                "dp = 400 kPa (differential pressure)",
                "dp0 = 3 bar (differential pressure of the rating)",
                "rho0 = 740 kg/m3 (density of the fluid of the rating)",
                "rho = 740 kg/m3 (density)",
                "Q0 = 800 cm3/min = 800 / 60000000 m3/s = 1.33333E-05 m3/s",
                "dp = 400 kPa = 400 * 1000 Pa = 400000 Pa",
                "dp0 = 3 bar = 3 * 100000 Pa = 300000 Pa",
                "Q = Q0 * sqrt(dp / dp0 * rho0 / rho)"
                    + " = 1.33333E-05 m3/s * sqrt(400000 Pa / 300000 Pa * 740 kg/m3 / (740 kg/m3)) = 1.5396E-05 m3/s",
                "    volume flow; [White-2003] section 6.12, as the ratio of two states",
                "Q = 1.5396E-05 m3/s = 1.5396E-05 * 60000000 cm3/min = 923.76 cm3/min",
            ],
            working.ToText(Invariant).TrimEnd('\n').Split('\n')
        );
        Assert.Equal(Carried.At<Real>([new(800 / 6e7), new(3e5), new(740), new(4e5), new(740)]).Value, working.Value);
    }

    /// <summary>A temperature has an offset: 68 degrees Fahrenheit are 293.15 K, and 20 K above are 104.</summary>
    [Fact]
    public void Conversion_OfATemperature_HasItsOffset()
    {
        FormulaInfo settled = FormulaCatalog.Named("TankHeating.SettledTemperature");

        Working working = settled.WorkingIn(["degF", "W", "W/K"], "degF", 68, 100, 5);

        Assert.Equal("Ta = 68 degF = (68 + 459.67) * 5 / 9 K = 293.15 K", working.Inputs[0].Conversion!.ToString());
        Assert.Equal("Ts = 313.15 K = 313.15 * 9 / 5 - 459.67 degF = 104 degF", working.Conversion!.ToString());
    }

    [Fact]
    public void WorkingIn_UnknownUnitOrWrongCount_Refuses()
    {
        Assert.Throws<ArgumentException>(() => Carried.WorkingIn(Units, "parsec", 800, 3, 740, 400, 740));
        Assert.Throws<ArgumentException>(() => Carried.WorkingIn(["bar"], "cm3/min", 800, 3, 740, 400, 740));
        Assert.Throws<FormulaRefusedException>(() => Carried.WorkingIn(Units, "cm3/min", 800, 3));
        Assert.Throws<FormulaRefusedException>(() => Carried.WorkingIn(Units, "cm3/min", 800, 0, 740, 400, 740));
    }

    [Fact]
    public void WithFigures_RoundsWhatIsShownAndNoBit()
    {
        Working full = Carried.WorkingOf(FormulaInfo.CallUnits.Customary, 800, 300, 740, 400, 740);

        Working three = full.WithFigures(3);

        Assert.Equal("Q = 1.54E-05 m3/s = 1.54E-05 * 60000000 cm3/min = 924 cm3/min", three.Conversion!.ToString());
        Assert.Equal("800 cm3/min", three.Inputs[0].ToGiven(Invariant));
        Assert.Equal(full.Value, three.Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => full.WithFigures(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => full.WithFigures(18));
    }

    [Theory]
    [InlineData(923.7604307034012, 6, "923.760")]
    [InlineData(923.7604307034012, 2, "920")]
    [InlineData(0.000123456, 3, "0.000123")]
    [InlineData(0.0000123456, 3, "1.23E-05")]
    [InlineData(9999999, 3, "1.00E+07")]
    [InlineData(9994999, 3, "9990000")]
    [InlineData(-0.0999, 2, "-0.10")]
    [InlineData(1, 4, "1.000")]
    [InlineData(0, 4, "0")]
    [InlineData(12345678901, 12, "12345678901.0")]
    public void SignificantFigures_AnyNumber_AreKept(double value, int figures, string expected) =>
        Assert.Equal(expected, SignificantFigures.Write(value, figures, Invariant));

    [Fact]
    public void ToMarkdown_IsATableAndAList()
    {
        string[] lines = Carried
            .WorkingIn(Units, "cm3/min", 800, 3, 740, 400, 740)
            .ToMarkdown(Invariant)
            .TrimEnd('\n')
            .Split('\n');

        Assert.Equal("| Symbol | Given | Meaning |", lines[0]);
        Assert.Equal("| `Q0` | 800 cm3/min | rated volume flow |", lines[2]);
        Assert.Equal("1. `Q0 = 800 cm3/min = 800 / 60000000 m3/s = 1.33333E-05 m3/s`", lines[8]);
        Assert.EndsWith("<br>volume flow; [White-2003] section 6.12, as the ratio of two states", lines[^2]);
        Assert.EndsWith("= 923.76 cm3/min`", lines[^1]);
    }

    [Fact]
    public void ToLatex_IsOneFormulaALine()
    {
        Working working = Carried.WorkingIn(Units, "cm3/min", 800, 3, 740, 400, 740);

        IReadOnlyList<string> lines = working.ToLatex(Invariant);

        Assert.Equal(@"Q_{0} = 800\ \mathrm{cm^{3}/min} \quad \text{(rated volume flow)}", lines[0]);
        Assert.Equal(
            @"Q_{0} = 800\ \mathrm{cm^{3}/min} = 800 / 60000000\ \mathrm{m^{3}/s} = 1.33333 \cdot 10^{-5}\ \mathrm{m^{3}/s}",
            lines[5]
        );
        Assert.StartsWith(
            @"Q = Q_{0} \cdot \sqrt{\frac{\Delta p}{\Delta p_{0}} \cdot \frac{\rho_{0}}{\rho}} = ",
            lines[8],
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("Re", @"\mathrm{Re}")]
    [InlineData("Rec", @"\mathrm{Re}_{c}")]
    [InlineData("dp0", @"\Delta p_{0}")]
    [InlineData("dp_2", @"\Delta p_{2}")]
    [InlineData("dp0_1", @"\Delta p_{0,1}")]
    [InlineData("rho", @"\rho")]
    [InlineData("rhoew", @"\rho_{\mathrm{ew}}")]
    [InlineData("lambda0", @"\lambda_{0}")]
    [InlineData("AFRst", @"\mathrm{AFR}_{\mathrm{st}}")]
    [InlineData("tp", "t_{p}")]
    [InlineData("dw", "d_{w}")]
    [InlineData("e/D", @"\frac{\varepsilon}{D}")]
    [InlineData("ln f", @"\text{ln f}")]
    [InlineData("number", @"\mathrm{number}")]
    [InlineData("dp_loop", @"\Delta p_{\mathrm{loop}}")]
    public void Latex_Symbols_AreTypeset(string name, string expected) => Assert.Equal(expected, Latex.Symbol(name));

    [Theory]
    [InlineData("kg/m3", @"\mathrm{kg/m^{3}}")]
    [InlineData("Pa s", @"\mathrm{Pa\ s}")]
    [InlineData("degC", @"\mathrm{{}^{\circ}C}")]
    [InlineData("%", @"\mathrm{\%}")]
    [InlineData("um", @"\mathrm{\mu{}m}")]
    [InlineData("m3/(s Pa^0.5)", @"\mathrm{m^{3}/(s\ Pa^{0.5})}")]
    public void Latex_Units_AreUpright(string unit, string expected) => Assert.Equal(expected, Latex.Unit(unit));
}
