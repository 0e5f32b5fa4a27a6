using UnitsNet;

namespace FuelMath;

/// <summary>A steady opening into a space of fixed pressure, such as an injector held open: q = C sqrt(dp).</summary>
/// <remarks>
/// Its line leads to a node of fixed pressure, whose height does not matter, because the weight of a gas column is
/// negligible. An opening between two lines is a Jet. Source: [White-2003] section 6.12.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed class Nozzle : FlowPart
{
    private readonly SquareSettings law;

    /// <summary>Describes a nozzle by one reading.</summary>
    /// <param name="flow">The flow of the reading; greater than zero.</param>
    /// <param name="differentialPressure">The difference at that flow; greater than zero.</param>
    /// <param name="density">Density of the fluid of that reading; greater than zero.</param>
    /// <param name="backflow">The behavior when the space has the higher pressure.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Nozzle(VolumeFlow flow, Pressure differentialPressure, Density density, InjectorDraw.Backflow backflow)
    {
        double c = PartMath.Coefficient(flow, differentialPressure);
        double rho = Guard.Positive(density, density.InSi());
        Backflow = Guard.Known(backflow);
        law = new SquareSettings
        {
            SquarePerDensity = 1 / (c * c) / rho,
            OneWay = backflow == InjectorDraw.Backflow.Prevented,
            IntoSpace = true,
            Scale = PartMath.UsualInjectorPressure,
        };
        (Flow, DifferentialPressure, Density) = (flow, differentialPressure, density);
    }

    /// <summary>The flow of the reading.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>The difference at that flow.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>Density of the fluid of that reading.</summary>
    public Density Density { get; }

    /// <summary>The behavior when the space has the higher pressure.</summary>
    public InjectorDraw.Backflow Backflow { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Flow} at {DifferentialPressure}");

    /// <inheritdoc />
    internal override LawSettings Law => law;

    /// <inheritdoc />
    internal override bool IsPassage => false;
}
