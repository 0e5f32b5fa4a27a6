using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Tests.Scalars;

public sealed class TracedTests
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    private static readonly Symbol A = new("a", "m", "a length");
    private static readonly Symbol B = new("b", "Pa s", "a viscosity");
    private static readonly Symbol C = new("c", "", "a number");
    private static readonly Symbol R = new("r", "m2", "a result");
    private static readonly DataSource Test = new("Definition", "of the test");

    private static readonly Traced TwoA = Traced.Input(A, 2);
    private static readonly Traced HalfB = Traced.Input(B, 0.5);
    private static readonly Traced MinusC = Traced.Input(C, -3);

    public static TheoryData<string, string, string> Expressions() =>
        new()
        {
            // Sums and products keep the brackets they need, and no others.
            { "sum in product", "(a + c) * a", "(2 m + (-3)) * 2 m" },
            { "difference of a sum", "a - (c + a)", "2 m - (-3 + 2 m)" },
            { "sum of a difference", "a + c - a", "2 m + (-3 - 2 m)" },
            { "quotient of a product", "a / (c * a)", "2 m / (-3 * 2 m)" },
            { "product of a quotient", "a * c / a", "2 m * (-3 / 2 m)" },
            { "product in sum", "a * c + a", "2 m * (-3) + 2 m" },
            // A unit of several words is not torn apart by a division, nor any unit by a power.
            { "quotient of a compound unit", "a / b", "2 m / (0.5 Pa s)" },
            { "square", "a^2", "(2 m)^2" },
            { "cube", "c^3", "(-3)^3" },
            { "fourth power from squares", "a^4", "(2 m)^4" },
            { "square of a sum", "(a + c)^2", "(2 m + (-3))^2" },
            { "square of a number without unit", "c^2", "(-3)^2" },
            // Signs.
            { "negative", "-a * c", "-2 m * (-3)" },
            { "negative of a sum", "-(a + c)", "-(2 m + (-3))" },
            { "negative on the right", "a + c", "2 m + (-3)" },
            { "constants", "64 / a + (-0.5 * c)", "64 / 2 m + (-0.5 * (-3))" },
            // Functions.
            { "functions", "sqrt(a) * exp(-b) + ln(a)", "sqrt(2 m) * exp(-0.5 Pa s) + ln(2 m)" },
            { "power", "(a / c)^0.9", "(2 m / (-3))^0.9" },
            { "negative power", "a^(-2)", "(2 m)^(-2)" },
            { "size", "a * |c|", "2 m * |-3|" },
        };

    [Theory]
    [MemberData(nameof(Expressions))]
    public void Step_AnyExpression_IsWrittenWithTheBracketsItNeeds(string name, string formula, string numbers)
    {
        Working.Line line = Traced.Step(Expression(name), R, Test).ToWorking().Lines.Single();

        Assert.Equal(formula, line.ToFormula(Invariant));
        Assert.Equal(numbers, line.ToSubstitution(Invariant));
    }

    [Fact]
    public void Step_Result_HasUnitMeaningAndSource()
    {
        Working working = Traced.Step(TwoA * TwoA, R, Test).ToWorking();

        Assert.Equal("r = a^2 = (2 m)^2 = 4 m2", working.Lines.Single().ToString());
        Assert.Equal("a = 2 m (a length)", working.Inputs.Single().ToString());
        Assert.Equal(
            "a = 2 m (a length)\nr = a^2 = (2 m)^2 = 4 m2\n    a result; [Definition] of the test\n",
            working.ToString()
        );
        Assert.Equal(4, working.Value);
    }

    [Fact]
    public void Select_TakenSide_IsShownWithItsCondition()
    {
        Mask<Traced> both = Traced.And(Traced.Less(MinusC, TwoA), Traced.Less(TwoA, Traced.Of(3)));
        Mask<Traced> either = Traced.Or(Traced.Less(TwoA, MinusC), Traced.Less(TwoA, Traced.Of(1)));

        Assert.Equal(
            "r = a = 2 m = 2 m2 (where c < a, a < 3)",
            Traced.Step(Traced.Select(both, TwoA, MinusC), R, Test).ToWorking().Lines.Single().ToString()
        );
        Assert.Equal(
            "r = c = -3 = -3 m2 (where a >= c, a >= 1)",
            Traced.Step(Traced.Select(either, TwoA, MinusC), R, Test).ToWorking().Lines.Single().ToString()
        );
        Assert.True(Traced.All(both));
        Assert.False(Traced.All(either));
        Assert.False(Traced.All(default));
    }

    /// <summary>Two steps of one name are told apart; the same input given twice is one.</summary>
    [Fact]
    public void ToWorking_SharedNames_AreNumbered()
    {
        Traced first = Traced.Step(Traced.Input(A, 2) * MinusC, R, Test);
        Traced second = Traced.Step(first + Traced.Input(A, 2), R, Test);
        Working working = second.ToWorking();

        Assert.Equal(["a", "c"], working.Inputs.Select(i => i.Label));
        Assert.Equal(["r_1", "r_2"], working.Lines.Select(l => l.Label));
        Assert.Equal("r_2 = r_1 + a = -6 m2 + 2 m = -4 m2", working.Lines[1].ToString());
    }

    [Fact]
    public void ToWorking_NoNamedStep_IsCalledResult() =>
        Assert.Equal("result = a + c = 2 m + (-3) = -1", (TwoA + MinusC).ToWorking().Lines.Single().ToString());

    [Fact]
    public void ToText_OtherCulture_WritesItsNumbers()
    {
        var comma = (NumberFormatInfo)NumberFormatInfo.InvariantInfo.Clone();
        comma.NumberDecimalSeparator = ",";

        Assert.Equal(
            "r = 0,5 * b = 0,5 * 0,5 Pa s = 0,25 m2",
            Traced.Step(0.5 * HalfB, R, Test).ToWorking().Lines[0].ToText(comma)
        );
    }

    /// <summary>What multiplies by one or adds nothing is not shown, and a choice of equal names is one step.</summary>
    [Fact]
    public void Step_FactorsOfOneAndTermsOfZero_Vanish()
    {
        Traced one = Traced.Of(1) / Traced.Of(1);

        Assert.Equal("a * b", Shown(one * TwoA * (HalfB * one) / one));
        Assert.Equal("a + b", Shown(TwoA + HalfB + Traced.Of(0) - 0));
        Assert.Equal("1 / a", Shown(1 / TwoA));
        Assert.Equal("b - a", Shown(Traced.Select(Traced.Less(TwoA, HalfB), TwoA, Traced.Step(HalfB - TwoA, R, Test))));
    }

    /// <summary>The whole of a formula, in laminar flow.</summary>
    [Fact]
    public void PressureLoss_LaminarFlow_ShowsItsWorking()
    {
        Traced loss = Friction.PressureLoss(
            Traced.Input(Symbols.Velocity, 1.2),
            Traced.Input(Symbols.Bore, 0.008),
            Traced.Input(Symbols.Length, 2.5),
            Traced.Input(Symbols.Roughness, 1.5e-6),
            Traced.Input(Symbols.Density, 740),
            Traced.Input(Symbols.DynamicViscosity, 0.0115)
        );

        Assert.Equal(
            [
                "Re = rho * |v| * D / mu = 740 kg/m3 * |1.2 m/s| * 0.008 m / (0.0115 Pa s) = 617.739",
                "f = 64 / Re = 64 / 617.739 = 0.103604 (where Re < 2000)",
                "dp = f * L / D * rho * v * |v| / 2 = 0.103604 * 2.5 m / 0.008 m * 740 kg/m3 * 1.2 m/s * |1.2 m/s| / 2"
                    + " = 17250 Pa (where Re >= 1)",
            ],
            loss.ToWorking().Lines.Select(l => l.ToString())
        );
    }

    [Fact]
    public void PressureLoss_TurbulentFlow_NamesTheLawAndItsRoot()
    {
        Traced factor = Friction.Factor(
            Traced.Input(Symbols.Reynolds, 1e5),
            Traced.Input(Symbols.RelativeRoughness, 1e-4)
        );
        Working working = factor.ToWorking();

        Assert.Equal("Colebrook(2.51 / Re; e/D / 3.7)", working.Lines[0].ToFormula(Invariant));
        Assert.Equal("1 / x^2", working.Lines[1].ToFormula(Invariant));
        Assert.Equal(["Re >= 2000", "Re >= 4000"], working.Lines[1].ToConditions(Invariant).AsEnumerable());
    }

    [Fact]
    public void Input_NotFinite_Refuses()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Traced.Input(A, double.NaN)
        );

        Assert.StartsWith("Must be finite; it was NaN.", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Traced.Input(null!, 1));
    }

    [Fact]
    public void Default_IsTheConstantZero() =>
        Assert.Equal("result = 0", default(Traced).ToWorking().Lines[0].ToString());

    private static string Shown(Traced value) =>
        Traced.Step(value, R, Test).ToWorking().Lines.Single().ToFormula(Invariant);

    private static Traced Expression(string name) =>
        name switch
        {
            "sum in product" => (TwoA + MinusC) * TwoA,
            "difference of a sum" => TwoA - (MinusC + TwoA),
            "sum of a difference" => TwoA + (MinusC - TwoA),
            "quotient of a product" => TwoA / (MinusC * TwoA),
            "product of a quotient" => TwoA * (MinusC / TwoA),
            "product in sum" => (TwoA * MinusC) + TwoA,
            "quotient of a compound unit" => TwoA / HalfB,
            "square" => TwoA * TwoA,
            "cube" => MinusC * MinusC * MinusC,
            "fourth power from squares" => Squared(TwoA * TwoA),
            "square of a sum" => Squared(TwoA + MinusC),
            "square of a number without unit" => MinusC * MinusC,
            "negative" => -TwoA * MinusC,
            "negative of a sum" => -(TwoA + MinusC),
            "negative on the right" => TwoA - -MinusC,
            "constants" => (64 / TwoA) + (-0.5 * MinusC),
            "functions" => (Traced.Sqrt(TwoA) * Traced.Exp(-HalfB)) + Traced.Log(TwoA),
            "power" => Traced.Pow(TwoA / MinusC, 0.9),
            "negative power" => Traced.Pow(TwoA, -2),
            "size" => TwoA * Traced.Abs(MinusC),
            _ => throw new ArgumentOutOfRangeException(nameof(name)),
        };

    private static Traced Squared(Traced x) => x * x;
}
