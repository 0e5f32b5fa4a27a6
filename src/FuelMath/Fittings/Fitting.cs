using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A fitting as a hydraulic loss: a loss coefficient and the bore whose velocity it refers to.</summary>
/// <remarks>
/// <para>
/// A coefficient means nothing without its bore: converted from an 8 mm fitting to a 10 mm hose it is 2.4 times as
/// large. <see cref="CoefficientFor"/> converts it. <see cref="Basis"/> says whether it is published, supplied or an
/// estimate.
/// </para>
/// <para>
/// For turbulent flow. In laminar flow, below a Reynolds number of about 2000, a fitting loses more than its
/// coefficient says; with fuels of low viscosity that happens at idle flow, where the loss is small.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/FittingExamples.cs" region="HoseEnds" />
/// </example>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed partial class Fitting : FlowPart
{
    private readonly double bore;
    private readonly double coefficient;

    /// <summary>Describes a fitting by its loss coefficient.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="bore">The bore that the coefficient refers to; greater than zero.</param>
    /// <param name="lossCoefficient">The loss coefficient; not negative.</param>
    /// <param name="basis">The basis of the coefficient.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Fitting(string name, Length bore, Ratio lossCoefficient, LossBasis basis, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        this.bore = Guard.Positive(bore, bore.InSi(), part: Name);
        coefficient = Guard.NotNegative(lossCoefficient, lossCoefficient.InSi(), part: Name);
        Basis = Guard.Known(basis, part: name);
        (Bore, LossCoefficient, Source) = (bore, lossCoefficient, source);
    }

    /// <inheritdoc />
    internal override LawSettings Law =>
        new SquareSettings { SquarePerDensity = PartMath.PerDensity(LossCoefficient.InSi(), Bore.InSi()) };

    /// <inheritdoc />
    internal override RefusalText? WhyNoLine =>
        coefficient > 0
            ? null
            : (RefusalText)
                $"A fitting by itself must lose something; the coefficient of '{Name:part}' is zero. Join its two nodes into one.";

    /// <inheritdoc />
    internal override ImmutableArray<string> Estimated => Basis == LossBasis.Estimate ? [Name] : [];

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The bore that the coefficient refers to.</summary>
    public Length Bore { get; }

    /// <summary>The loss coefficient, for that bore.</summary>
    public Ratio LossCoefficient { get; }

    /// <summary>The basis of the coefficient.</summary>
    public LossBasis Basis { get; }

    /// <summary>Where it comes from.</summary>
    public DataSource Source { get; }

    /// <summary>The coefficient converted to another bore: the same loss, for the velocity there.</summary>
    /// <param name="otherBore">The other bore; greater than zero.</param>
    /// <returns>The loss coefficient of the other bore.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bore is not greater than zero.</exception>
    public Ratio CoefficientFor(Length otherBore) => SiUnits.Ratio(Carried(otherBore));

    /// <summary>The pressure loss.</summary>
    /// <param name="flow">Volume flow; the loss has its sign.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The loss, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure LossAt(VolumeFlow flow, Density density)
    {
        Real velocity = Friction.Velocity(new Real(Guard.Finite(flow, flow.InSi(), part: Name)), new Real(bore));
        Real rho = new(Guard.Positive(density, density.InSi(), part: Name));
        return SiUnits.Pressure(MinorLoss.PressureLoss(new Real(coefficient), rho, velocity).Value);
    }

    /// <summary>Formats its name, coefficient and bore.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{Name}: K {coefficient:0.###} at {bore * 1e3:0.##} mm");

    internal double Carried(Length otherBore, [CallerArgumentExpression(nameof(otherBore))] string paramName = "") =>
        MinorLoss
            .CarriedCoefficient(
                new Real(coefficient),
                new Real(bore),
                new Real(Guard.Positive(otherBore, otherBore.InSi(), paramName, part: Name))
            )
            .Value;
}
