using UnitsNet;

namespace FuelMath;

/// <summary>A hose cut to length with a fitting on either end.</summary>
/// <remarks>
/// Its length is that from seat to seat. The hose itself is cut shorter by the allowances of both fittings.
/// </remarks>
/// <seealso href="../guide/lines.html">Lines</seealso>
public sealed partial class HoseAssembly
{
    private readonly double cut;

    /// <summary>Describes a hose assembled with its fittings.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="stock">The hose that it is cut from.</param>
    /// <param name="length">Length from seat to seat; more than both allowances together.</param>
    /// <param name="first">The fitting at its start.</param>
    /// <param name="second">The fitting at its end.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException">Stock, a fitting or the source is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public HoseAssembly(
        string name,
        HoseStock stock,
        Length length,
        EndFitting first,
        EndFitting second,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Name = Guard.Name(name);
        Stock = stock;
        double allowances = first.CutAllowance.InSi() + second.CutAllowance.InSi();
        cut = length.InSi() - allowances;
        if (!(cut > 0) || !double.IsFinite(cut))
        {
            throw Guard.OutOfRange(
                length,
                $"finite and more than the allowances of both fittings, {SiUnits.Length(allowances):above}",
                part: name
            );
        }

        Ratio ends = new FittingSeries([first.Loss, second.Loss]).CoefficientFor(stock.Bore);
        Hose = new(name, SiUnits.Length(cut), stock.Bore, stock.Roughness, ends, source);
        (Length, First, Second) = (length, first, second);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The hose that it is cut from.</summary>
    public HoseStock Stock { get; }

    /// <summary>Length from seat to seat.</summary>
    public Length Length { get; }

    /// <summary>The fitting at its start.</summary>
    public EndFitting First { get; }

    /// <summary>The fitting at its end.</summary>
    public EndFitting Second { get; }

    /// <summary>Length that the hose is cut to, in m.</summary>
    public Length CutLength => SiUnits.Length(cut);

    /// <summary>
    /// The hose as a hydraulic loss: cut length, with the coefficients of both fittings converted to its bore.
    /// </summary>
    public Hose Hose { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {CutLength} of {Stock.Name}");
}
