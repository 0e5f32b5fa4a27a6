namespace FuelMath.Formulas;

/// <summary>The name of a quantity in a formula, as a working prints it.</summary>
/// <remarks>
/// Formulas keep their symbols in static fields, so that naming a step costs nothing without a working. A symbol has no
/// source: one quantity comes from many formulas.
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public sealed class Symbol
{
    /// <summary>Names a quantity.</summary>
    /// <param name="name">The symbol as printed, for example <c>Re</c>; not blank.</param>
    /// <param name="unit">The SI unit as printed; empty for a pure number.</param>
    /// <param name="meaning">What it is, in words; not blank.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> or <paramref name="meaning"/> is blank.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    public Symbol(string name, string unit, string meaning)
    {
        ArgumentNullException.ThrowIfNull(unit);
        Name = Guard.NotBlank(name);
        Unit = unit;
        Meaning = Guard.NotBlank(meaning);
    }

    /// <summary>The symbol as printed.</summary>
    public string Name { get; }

    /// <summary>The SI unit as printed; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>What it is, in words.</summary>
    public string Meaning { get; }

    /// <summary>Gives the symbol as printed.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
