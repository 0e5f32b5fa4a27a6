using UnitsNet;

namespace FuelMath;

/// <summary>The contribution of one uncertain input to the scatter of an output.</summary>
/// <typeparam name="TDeviation">The type of a difference of two outputs.</typeparam>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class ScatterShare<TDeviation>
{
    internal ScatterShare(UncertainInput input, TDeviation standardDeviation, Ratio share, bool isBent)
    {
        (Input, StandardDeviation, Share, IsBent) = (input, standardDeviation, share, isBent);
    }

    /// <summary>The input.</summary>
    public UncertainInput Input { get; }

    /// <summary>The standard deviation of the output if all other inputs were exact; not negative.</summary>
    public TDeviation StandardDeviation { get; }

    /// <summary>Its share of the total variance, 0 to 100 %; zero where nothing scatters.</summary>
    public Ratio Share { get; }

    /// <summary>
    /// Whether the output is so curved over the input's scatter that a tenth or more of the contribution is not
    /// linear: then use <see cref="SystemMonteCarlo"/>.
    /// </summary>
    public bool IsBent { get; }

    /// <summary>Formats the input and its share.</summary>
    /// <returns>The text, in invariant culture.</returns>
    public override string ToString() => FormattableString.Invariant($"{Input.Name}: {100 * Share.InSi():0} %");
}
