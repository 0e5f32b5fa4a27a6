using System.Globalization;
using System.Text;
using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>A chart of a formula over one argument, the others as in its example: the result above, its slope below.</summary>
internal static class FormulaChart
{
    private const int Points = 120;
    private const double Width = 640;
    private const double PanelHeight = 160;
    private const double Height = 500;
    private const double Left = 80;
    private const double Right = 610;

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>The arguments that charts run over where it is not the first one.</summary>
    private static readonly Dictionary<string, int> Main = new()
    {
        ["Orifice.MassFlow"] = 3,
        ["Orifice.VolumeFlow"] = 3,
        ["Orifice.CarriedMassFlow"] = 3,
        ["Orifice.CarriedVolumeFlow"] = 3,
        ["Orifice.PowerLawMassFlow"] = 3,
        ["MinorLoss.PressureLoss"] = 2,
        ["PorousMedium.PressureLoss"] = 4,
        ["CurvedFriction.Factor"] = 0,
        ["Suction.PressureAboveBoiling"] = 2,
        ["Hydrostatics.ColumnPressure"] = 1,
        ["PumpScaling.Flow"] = 1,
        ["PumpScaling.PressureRise"] = 1,
        ["PumpScaling.Power"] = 1,
        ["PumpScaling.WornFlow"] = 3,
        ["BendLoss.RoundedBend"] = 3,
        ["BendLoss.TwoConstants"] = 2,
        ["BypassValve.HeldPressure"] = 6,
        ["ReducingValve.HeldPressure"] = 6,
        ["BypassValve.FullyOpenLoss"] = 2,
        ["WireResistance.Resistance"] = 4,
        ["WireResistance.CarriedResistance"] = 3,
        ["WireResistance.TemperatureFromResistance"] = 3,
        ["VaporPressure.FromReid"] = 1,
        ["VaporPressure.Antoine"] = 3,
        ["ThermalExpansion.VolumeCorrection"] = 1,
        ["ThermalExpansion.GasolineVolumeCorrection"] = 1,
        ["TankHeating.SettledTemperature"] = 1,
        ["TankHeating.TemperatureAfter"] = 5,
        ["TankHeating.DrainingAdiabatic"] = 4,
        ["TankHeating.DrainingTemperature"] = 6,
        ["PressureDecay.Compliance"] = 4,
        ["PressureDecay.LaminarFallTime"] = 7,
        ["PressureDecay.OrificeFallTime"] = 5,
        ["PressureDecay.ReleasedVolume"] = 5,
        ["PressureDecay.LeakedVolume"] = 7,
        ["Combustion.Lambda"] = 1,
        ["EngineAir.FuelMass"] = 2,
        ["Pulse.Mass"] = 1,
        ["LiquidElasticity.DensityUnderPressure"] = 2,
        ["Friction.Reynolds"] = 0,
        ["TankBalance.AddedVolume"] = 3,
        ["TankBalance.FirstVolume"] = 4,
        ["TubeElasticity.HoopStress"] = 3,
        ["PulseTiming.NeededStaticFlow"] = 1,
        ["MixtureError.LambdaFactor"] = 4,
    };

    internal static string Caption(FormulaInfo formula)
    {
        FormulaQuantity x = formula.Arguments[Argument(formula)].Quantity;
        return $"Above: {formula.Result.Symbol.Meaning}{In(formula.Result)} over {x.Symbol.Meaning}{In(x)}, the other arguments as in the example. Below: its exact slope.";
    }

    internal static string Draw(FormulaInfo formula)
    {
        int by = Argument(formula);
        FormulaInfo.Argument argument = formula.Arguments[by];
        double[] at = FormulaPages.CustomaryExample(formula);
        (double low, double high) = (
            argument.Quantity.FromSi(argument.UsualMinimum, argument.Quantity.CustomaryUnit),
            argument.Quantity.FromSi(argument.UsualMaximum, argument.Quantity.CustomaryUnit)
        );
        var values = new List<(double X, double Y)>();
        var slopes = new List<(double X, double Y)>();
        bool wide = ChartAxis.IsWide(low, high);
        for (int i = 0; i <= Points; i++)
        {
            double part = i / (double)Points;
            at[by] = wide ? low * Math.Pow(high / low, part) : low + ((high - low) * part);
            if (formula.Check(FormulaInfo.CallUnits.Customary, at) is null)
            {
                values.Add((at[by], formula.Calculate(FormulaInfo.CallUnits.Customary, at)));
                slopes.Add((at[by], Slope(formula, by, at)));
            }
        }

        string over = argument.Quantity.CustomaryUnit == "1" ? "" : $" in {argument.Quantity.CustomaryUnit}";
        string unit = formula.Result.CustomaryUnit == "1" ? "" : $" in {formula.Result.CustomaryUnit}";
        var svg = new StringBuilder();
        svg.Append(
            Invariant,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Width} {Height}\" font-family=\"sans-serif\" font-size=\"13\" fill=\"#333\">\n"
        );
        ChartAxis x = ChartAxis.Of(low, high, Left, Right);
        Panel(svg, values, x, 30, "#1f5fa8", $"{formula.Result.Symbol.Name}{unit}");
        Panel(svg, slopes, x, 30 + PanelHeight + 60, "#a8501f", "slope");
        svg.Append(
            Invariant,
            $"<text x=\"{(Left + Right) / 2}\" y=\"{Height - 8}\" text-anchor=\"middle\">{argument.Name}{over}</text>\n</svg>\n"
        );
        return svg.ToString();
    }

    private static int Argument(FormulaInfo formula) => Main.GetValueOrDefault(formula.Name);

    private static string In(FormulaQuantity quantity) =>
        quantity.CustomaryUnit == "1" ? "" : $" in {quantity.CustomaryUnit}";

    /// <summary>A kink at the very edge, such as the root of zero, has no slope: it is left out of the line.</summary>
    private static double Slope(FormulaInfo formula, int by, double[] at)
    {
        try
        {
            return formula.Slope(FormulaInfo.CallUnits.Customary, by, at);
        }
        catch (FormulaRefusedException)
        {
            return double.NaN;
        }
    }

    private static void Panel(
        StringBuilder svg,
        List<(double X, double Y)> line,
        ChartAxis x,
        double top,
        string color,
        string label
    )
    {
        (double X, double Y)[] drawn = [.. line.Where(p => double.IsFinite(p.Y))];
        double bottom = top + PanelHeight;
        ChartAxis y = ChartAxis.Of(drawn.Min(p => p.Y), drawn.Max(p => p.Y), bottom, top);
        svg.Append(Invariant, $"<text x=\"{Left}\" y=\"{top - 10}\">{label}</text>\n<g stroke=\"#ddd\">");
        foreach (double tick in x.Ticks)
        {
            svg.Append(Invariant, $"<path d=\"M{x.At(tick):0.0} {top}V{bottom}\"/>");
        }

        foreach (double tick in y.Ticks)
        {
            svg.Append(Invariant, $"<path d=\"M{Left} {y.At(tick):0.0}H{Right}\"/>");
        }

        svg.Append("</g>\n");
        foreach (double tick in x.Ticks)
        {
            svg.Append(
                Invariant,
                $"<text x=\"{x.At(tick):0.0}\" y=\"{bottom + 18}\" text-anchor=\"middle\">{tick:G5}</text>"
            );
        }

        foreach (double tick in y.Ticks)
        {
            svg.Append(
                Invariant,
                $"<text x=\"{Left - 6}\" y=\"{y.At(tick) + 4:0.0}\" text-anchor=\"end\">{tick:G5}</text>"
            );
        }

        string points = string.Join(
            " ",
            drawn.Select(p => string.Create(Invariant, $"{x.At(p.X):0.0},{y.At(p.Y):0.0}"))
        );
        svg.Append(
            Invariant,
            $"\n<polyline points=\"{points}\" fill=\"none\" stroke=\"{color}\" stroke-width=\"2\"/>\n"
        );
    }
}
