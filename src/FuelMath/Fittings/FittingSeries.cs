using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Fittings in series, such as those on a hose: their losses add up.</summary>
/// <remarks>
/// <para>
/// Each coefficient is converted to one bore before it is added. Fittings closer together than about ten bores
/// influence each other, and mostly lose less than their sum: the sum is on the safe side.
/// </para>
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed class FittingSeries
{
    /// <summary>Creates a series of fittings.</summary>
    /// <param name="fittings">The fittings; may be empty.</param>
    /// <exception cref="ArgumentNullException">The list or one of its fittings is null.</exception>
    public FittingSeries(IEnumerable<Fitting> fittings)
    {
        ArgumentNullException.ThrowIfNull(fittings);
        Fittings = [.. fittings];
        foreach (Fitting fitting in Fittings)
        {
            ArgumentNullException.ThrowIfNull(fitting, nameof(fittings));
        }
    }

    /// <summary>The fittings, in the order given.</summary>
    public ImmutableArray<Fitting> Fittings { get; }

    /// <summary>Those of them whose coefficient is an estimate.</summary>
    public ImmutableArray<Fitting> Estimates => [.. Fittings.Where(f => f.Basis == Fitting.LossBasis.Estimate)];

    /// <summary>The sum of their coefficients for one bore.</summary>
    /// <param name="bore">The bore; greater than zero.</param>
    /// <returns>The sum, for the velocity in that bore.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bore is outside what is allowed.</exception>
    public Ratio CoefficientFor(Length bore)
    {
        Guard.Positive(bore, bore.InSi());
        return SiUnits.Ratio(Fittings.Sum(f => f.Carried(bore)));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{string.Join(", ", Fittings.Select(f => f.Name))}");
}
