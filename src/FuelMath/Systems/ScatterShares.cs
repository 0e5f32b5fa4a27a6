using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The shares of a system's uncertain inputs in the scatter of one output.</summary>
/// <typeparam name="TValue">The type of the output.</typeparam>
/// <typeparam name="TDeviation">The type of a difference of two outputs.</typeparam>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class ScatterShares<TValue, TDeviation>
{
    internal ScatterShares(
        TValue bestEstimate,
        IReadOnlyList<UncertainInput> inputs,
        IReadOnlyList<(double Straight, double Bent)> variances,
        Func<double, TDeviation> toDeviation
    )
    {
        BestEstimate = bestEstimate;
        double all = variances.Sum(v => v.Straight + v.Bent);
        StandardDeviation = toDeviation(Math.Sqrt(all));
        Lines =
        [
            .. inputs
                .Select(
                    (input, i) =>
                    {
                        (double straight, double bent) = variances[i];
                        double own = straight + bent;
                        return new ScatterShare<TDeviation>(
                            input,
                            toDeviation(Math.Sqrt(own)),
                            SiUnits.Ratio(all == 0 ? 0 : own / all),
                            bent > 0.1 * own
                        );
                    }
                )
                .OrderByDescending(line => line.Share.InSi()),
        ];
    }

    /// <summary>The output with every input at its best estimate.</summary>
    public TValue BestEstimate { get; }

    /// <summary>The contribution of each input, the largest first.</summary>
    public ImmutableArray<ScatterShare<TDeviation>> Lines { get; }

    /// <summary>The standard deviation of the output, all inputs together.</summary>
    public TDeviation StandardDeviation { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{BestEstimate}, standard deviation {StandardDeviation}");
}
