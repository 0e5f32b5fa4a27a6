using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath;

/// <summary>Causes in words, and their parameters as quantities.</summary>
internal static class CauseWords
{
    private static readonly double Reach = ModelComparison.NormalFactor(0.95);

    internal static string Name(CauseModel model) => Name(model.Cause, model.Chamber);

    /// <summary>A cause in words; the chamber is counted from 0.</summary>
    internal static string Name(MixtureDiagnosis.Cause cause, int chamber) =>
        cause switch
        {
            MixtureDiagnosis.Cause.NoError => "no error",
            MixtureDiagnosis.Cause.InjectorFlow => "injector flow",
            MixtureDiagnosis.Cause.DeadTime => "dead time",
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime => "injector flow and dead time",
            MixtureDiagnosis.Cause.RailPressure => "rail pressure",
            MixtureDiagnosis.Cause.PressureReference => "reference of the regulator",
            MixtureDiagnosis.Cause.FuelDensity => "fuel density",
            MixtureDiagnosis.Cause.StoichiometricRatio => "stoichiometric ratio of the fuel",
            MixtureDiagnosis.Cause.AirModel => "air model",
            MixtureDiagnosis.Cause.AirModelOverLoad => "air model over load",
            MixtureDiagnosis.Cause.AirModelOverSpeed => "air model over speed",
            MixtureDiagnosis.Cause.OneInjectorFlow => $"flow of the injector of {Chamber(chamber)}",
            _ => $"leak of the injector of {Chamber(chamber)}",
        };

    private static string Chamber(int chamber) => string.Create(CultureInfo.InvariantCulture, $"chamber {chamber + 1}");

    /// <summary>The parameters of a fit as quantities, each with its interval.</summary>
    internal static ImmutableArray<MixtureDiagnosis.Estimate> Estimates(CauseModel model, CurveFit fit) =>
        model.Cause switch
        {
            MixtureDiagnosis.Cause.NoError => [],
            MixtureDiagnosis.Cause.InjectorFlow => [Factor(fit, 0, "static flow over the flow presumed")],
            MixtureDiagnosis.Cause.DeadTime => [Time(fit, 0)],
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime =>
            [
                Factor(fit, 0, "static flow over the flow presumed"),
                Time(fit, 1),
            ],
            MixtureDiagnosis.Cause.RailPressure =>
            [
                Linear(fit, "rail pressure less the one presumed", p => SiUnits.Pressure(p * model.LeastPressure)),
            ],
            MixtureDiagnosis.Cause.PressureReference =>
            [
                Linear(fit, "share of the manifold's gauge pressure that the rail misses", p => SiUnits.Ratio(p)),
            ],
            MixtureDiagnosis.Cause.FuelDensity => [Factor(fit, 0, "fuel density over the density presumed")],
            MixtureDiagnosis.Cause.StoichiometricRatio =>
            [
                Factor(fit, 0, "stoichiometric ratio over the one presumed"),
            ],
            MixtureDiagnosis.Cause.AirModel => [Factor(fit, 0, "air over the air that the controller reckons with")],
            MixtureDiagnosis.Cause.AirModelOverLoad =>
            [
                Factor(fit, 0, "air over the air reckoned with at the lowest manifold pressure"),
                Factor(fit, 1, "air over the air reckoned with at the highest manifold pressure"),
            ],
            MixtureDiagnosis.Cause.AirModelOverSpeed =>
            [
                Factor(fit, 0, "air over the air reckoned with at the lowest speed"),
                Factor(fit, 1, "air over the air reckoned with at the highest speed"),
            ],
            MixtureDiagnosis.Cause.OneInjectorFlow =>
            [
                Linear(
                    fit,
                    $"static flow of {Chamber(model.Chamber)} over the flow presumed",
                    p => SiUnits.Ratio(p),
                    1
                ),
            ],
            _ =>
            [
                Linear(
                    fit,
                    $"leak into {Chamber(model.Chamber)} at {Show.Bar(model.LeastPressure)}",
                    p => SiUnits.MassFlow(p * model.StaticFlow)
                ),
            ],
        };

    /// <summary>Remarks on a fit.</summary>
    internal static ImmutableArray<string> Remarks(CauseModel model, CurveFit fit)
    {
        var remarks = ImmutableArray.CreateBuilder<string>();
        if (model.Beyond(fit.Parameters) is { } beyond)
        {
            remarks.Add(beyond);
        }

        if (model.IsAtEnd(fit.Parameters))
        {
            remarks.Add("The estimate is at the end of what is possible: this cause alone can't explain more.");
        }

        return remarks.ToImmutable();
    }

    /// <summary>
    /// A sentence on data of an injector that do not reach a pressure and refuse it; null when all reach it.
    /// </summary>
    internal static string? Beyond(Injector injector, double pressure)
    {
        if (injector.DeadTime is { DependsOnPressure: true, Outside: OutsideRange.Refuse } table)
        {
            (double low, double high) = (table.DifferentialPressures[0].InSi(), table.DifferentialPressures[^1].InSi());
            if (IsBeyond(pressure, low, high))
            {
                return $"The dead-time table of '{injector.Name}' reaches from {Show.Bar(low)} to {Show.Bar(high)} and was held at its end for {Show.Bar(pressure)}.";
            }
        }

        if (injector.Rating.Exponent is { Outside: OutsideRange.Refuse } exponent)
        {
            (double low, double high) = (
                exponent.LowestDifferentialPressure.InSi(),
                exponent.HighestDifferentialPressure.InSi()
            );
            if (IsBeyond(pressure, low, high))
            {
                return $"The power of pressure of '{injector.Name}' was measured from {Show.Bar(low)} to {Show.Bar(high)} and carried on to {Show.Bar(pressure)}.";
            }
        }

        return null;
    }

    private static bool IsBeyond(double value, double low, double high)
    {
        double slack = Guard.EdgeTolerance * (high - low);
        return value < low - slack || value > high + slack;
    }

    /// <summary>A ratio from its logarithm.</summary>
    private static MixtureDiagnosis.Estimate Factor(CurveFit fit, int index, string what)
    {
        (double log, double error) = (fit.Parameters[index], fit.StandardError(index));
        double value = Math.Exp(log);
        return new(
            what,
            SiUnits.Ratio(value),
            SiUnits.Ratio(value * error),
            SiUnits.Ratio(Math.Exp(log - (Reach * error))),
            SiUnits.Ratio(Math.Exp(log + (Reach * error)))
        );
    }

    private static MixtureDiagnosis.Estimate Time(CurveFit fit, int index) =>
        Linear(fit, "dead time less the one presumed", p => SiUnits.Duration(p * 1e-3), 0, index);

    /// <summary>A quantity that is linear in the parameter, with an offset.</summary>
    private static MixtureDiagnosis.Estimate Linear(
        CurveFit fit,
        string what,
        Func<double, IQuantity> of,
        double offset = 0,
        int index = 0
    )
    {
        (double value, double error) = (offset + fit.Parameters[index], fit.StandardError(index));
        return new(what, of(value), of(error), of(value - (Reach * error)), of(value + (Reach * error)));
    }
}
