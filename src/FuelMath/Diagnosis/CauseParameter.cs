using FuelMath.Formulas;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A parameter of a cause, of order one in the fit: its symbol, its bounds, and what it is as a quantity.
/// </summary>
/// <param name="symbol">The symbol in a working.</param>
internal abstract class CauseParameter(Symbol symbol)
{
    /// <summary>Standard errors from the middle to an end of an interval of 95 %.</summary>
    protected static double Reach { get; } = ModelComparison.NormalFactor(0.95);

    internal Symbol Symbol => symbol;

    /// <summary>The least value that is possible; unbounded unless given.</summary>
    internal Func<CauseModel, double> Lowest { get; init; } = _ => double.NegativeInfinity;

    /// <summary>The greatest value that is possible; unbounded unless given.</summary>
    internal Func<CauseModel, double> Highest { get; init; } = _ => double.PositiveInfinity;

    /// <summary>The fitted value with its interval.</summary>
    internal abstract MixtureDiagnosis.Estimate Estimate(CauseModel model, double value, double error);

    /// <summary>The logarithm of a factor: its interval is not symmetric.</summary>
    internal sealed class Factor(Symbol symbol, string what) : CauseParameter(symbol)
    {
        internal override MixtureDiagnosis.Estimate Estimate(CauseModel model, double value, double error)
        {
            double factor = Math.Exp(value);
            return new(
                what,
                SiUnits.Ratio(factor),
                SiUnits.Ratio(factor * error),
                SiUnits.Ratio(Math.Exp(value - (Reach * error))),
                SiUnits.Ratio(Math.Exp(value + (Reach * error)))
            );
        }
    }

    /// <summary>A quantity that is linear in the parameter, zero at <paramref name="zero"/>.</summary>
    internal sealed class Linear(
        Symbol symbol,
        Func<CauseModel, string> what,
        Func<CauseModel, double, IQuantity> quantity,
        double zero = 0
    ) : CauseParameter(symbol)
    {
        internal override MixtureDiagnosis.Estimate Estimate(CauseModel model, double value, double error)
        {
            double middle = value - zero;
            return new(
                what(model),
                quantity(model, middle),
                quantity(model, error),
                quantity(model, middle - (Reach * error)),
                quantity(model, middle + (Reach * error))
            );
        }
    }
}
