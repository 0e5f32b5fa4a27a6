using UnitsNet;

namespace FuelMath;

/// <summary>What one uncertain input adds to the scatter of an output.</summary>
/// <typeparam name="TDeviation">What a difference of two outputs is.</typeparam>
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

    /// <summary>Its part of the square of the standard deviation of all together, 0 to 100 %; zero where nothing scatters.</summary>
    public Ratio Share { get; }

    /// <summary>
    /// Whether the output bends over the input's scatter by so much that a tenth or more of its part is not that of a straight
    /// line: then take <see cref="SystemMonteCarlo"/>.
    /// </summary>
    public bool IsBent { get; }

    /// <summary>Formats the input and its share.</summary>
    /// <returns>The text, in invariant culture.</returns>
    public override string ToString() => FormattableString.Invariant($"{Input.Name}: {100 * Share.InSi():0} %");
}
