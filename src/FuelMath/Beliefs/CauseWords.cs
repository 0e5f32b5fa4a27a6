using System.Collections.Immutable;
using FuelMath.Internal;
using FuelMath.Uncertainty;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>Causes in words, and their parameters as quantities.</summary>
internal static class CauseWords
{
    private static readonly double Reach = ModelComparison.NormalFactor(0.95);

    internal static string Name(BeliefCause cause) =>
        cause switch
        {
            BeliefCause.Nothing => "nothing",
            BeliefCause.Flow => "flow",
            BeliefCause.DeadTime => "dead time",
            BeliefCause.FlowAndDeadTime => "flow and dead time",
            BeliefCause.Pressure => "pressure",
            BeliefCause.PressureReference => "reference of the regulator",
            BeliefCause.Air => "air model",
            BeliefCause.AirOverLoad => "air model over load",
            _ => "air model over speed",
        };

    /// <summary>Whether one of two causes is part of the other, or nothing: then they are no rivals.</summary>
    internal static bool Share(BeliefCause one, BeliefCause other) =>
        one == other
        || one == BeliefCause.Nothing
        || other == BeliefCause.Nothing
        || Contains(one, other)
        || Contains(other, one);

    /// <summary>The parameters of a fit as quantities, each with its interval.</summary>
    internal static ImmutableArray<CauseEstimate> Estimates(CauseModel model, CurveFit fit) =>
        model.Cause switch
        {
            BeliefCause.Nothing => [],
            BeliefCause.Flow => [Factor(fit, 0, "static flow over the flow believed")],
            BeliefCause.DeadTime => [Time(fit, 0)],
            BeliefCause.FlowAndDeadTime => [Factor(fit, 0, "static flow over the flow believed"), Time(fit, 1)],
            BeliefCause.Pressure =>
            [
                Linear(
                    fit,
                    0,
                    "differential pressure less the one believed",
                    p => SiUnits.Pressure(p * model.LeastPressure)
                ),
            ],
            BeliefCause.PressureReference =>
            [
                Linear(fit, 0, "share of the manifold's gauge pressure that the rail misses", p => SiUnits.Ratio(p)),
            ],
            BeliefCause.Air => [Factor(fit, 0, "air over the air believed")],
            BeliefCause.AirOverLoad =>
            [
                Factor(fit, 0, "air over the air believed at the lowest manifold pressure"),
                Factor(fit, 1, "air over the air believed at the highest manifold pressure"),
            ],
            _ =>
            [
                Factor(fit, 0, "air over the air believed at the lowest speed"),
                Factor(fit, 1, "air over the air believed at the highest speed"),
            ],
        };

    private static bool Contains(BeliefCause whole, BeliefCause part) =>
        whole switch
        {
            BeliefCause.FlowAndDeadTime => part is BeliefCause.Flow or BeliefCause.DeadTime,
            BeliefCause.AirOverLoad or BeliefCause.AirOverSpeed => part == BeliefCause.Air,
            _ => false,
        };

    /// <summary>A ratio from its logarithm.</summary>
    private static CauseEstimate Factor(CurveFit fit, int index, string what)
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

    private static CauseEstimate Time(CurveFit fit, int index) =>
        Linear(fit, index, "dead time less the one believed", p => SiUnits.Duration(p * 1e-3));

    private static CauseEstimate Linear(CurveFit fit, int index, string what, Func<double, IQuantity> of)
    {
        (double value, double error) = (fit.Parameters[index], fit.StandardError(index));
        return new(what, of(value), of(error), of(value - (Reach * error)), of(value + (Reach * error)));
    }
}
