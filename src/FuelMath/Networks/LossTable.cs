using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A part known only by its measured pressure losses at some flows.</summary>
/// <remarks>
/// <para>
/// A monotone curve through zero and the readings; the same backwards. A flow beyond the last reading is refused after
/// the solution, not extrapolated.
/// </para>
/// <para>
/// It is converted to another fluid by similarity: at the same Reynolds number the loss is proportional to ρv². That
/// holds for any rigid passage, but not for one opened by a spring or a rubber lip.
/// </para>
/// <para>Source: [White-2003] chapter 5 (similarity of pressure loss and Reynolds number).</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/CustomPartExamples.cs" region="LossTable" />
/// </example>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class LossTable : FlowPart
{
    private readonly LossTableSettings settings;

    /// <summary>Creates a part from readings.</summary>
    /// <param name="name">Its name in messages; not blank.</param>
    /// <param name="readings">
    /// The readings, at least one; flow and loss both rise from each to the next. Zero loss at zero flow is implied.
    /// </param>
    /// <param name="density">Density of the fluid of the readings; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of that fluid; greater than zero.</param>
    /// <param name="source">Where the readings come from.</param>
    /// <exception cref="ArgumentException">The name is blank, there are no readings, or they do not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A property of the fluid is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public LossTable(
        string name,
        IEnumerable<Point> readings,
        Density density,
        DynamicViscosity viscosity,
        DataSource source
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(source);
        Readings = [.. readings];
        if (Readings.IsEmpty)
        {
            throw Guard.Empty(nameof(readings));
        }

        double[] flows = [0, .. Readings.Select(r => r.FlowSi)];
        double[] losses = [0, .. Readings.Select(r => r.LossSi)];
        Guard.StrictlyRising(flows, "Flow", nameof(readings), part: name);
        Guard.StrictlyRising(losses, "Loss", nameof(readings), part: name);
        double rho = Guard.Positive(density, density.InSi(), part: name);
        double mu = Guard.Positive(viscosity, viscosity.InSi(), part: name);
        (Density, Viscosity, Source) = (density, viscosity, source);
        Curve curve = new($"loss of '{name}'", "flow (m3/s)", flows, losses, OutsideRange.Extend);
        settings = new LossTableSettings(name, curve.Pieces.ToArray(), Readings[^1].Flow, rho, mu / rho);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The readings.</summary>
    public ImmutableArray<Point> Readings { get; }

    /// <summary>Density of the fluid of the readings.</summary>
    public Density Density { get; }

    /// <summary>Dynamic viscosity of that fluid.</summary>
    public DynamicViscosity Viscosity { get; }

    /// <summary>Where the readings come from.</summary>
    public DataSource Source { get; }

    /// <inheritdoc />
    internal override LawSettings Law => settings;

    /// <summary>The pressure loss at a flow.</summary>
    /// <param name="flow">Volume flow, of either sign.</param>
    /// <param name="density">Density of the fluid; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fluid; greater than zero.</param>
    /// <returns>The loss, in Pa, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="OutsideTableException">The flow lies beyond the last reading.</exception>
    public Pressure LossAt(VolumeFlow flow, Density density, DynamicViscosity viscosity)
    {
        double q = Guard.Finite(flow, flow.InSi(), part: Name);
        double rho = Guard.Positive(density, density.InSi(), part: Name);
        double mu = Guard.Positive(viscosity, viscosity.InSi(), part: Name);
        LossTableLaw<Real> law = default;
        law.Load(settings);
        law.Carry(settings, new Surroundings<Real>(new Real(rho), new Real(mu)));
        settings.CheckFlow(q, law.GreatestFlow.Value, 0);
        Real memory = default;
        return SiUnits.Pressure(law.At(new Real(q), default, default, default, ref memory).Loss.Number.Value);
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Readings.Length} readings");
}
