using UnitsNet;

namespace FuelMath;

/// <summary>Standard uncertainties of the real conditions from which a lambda is predicted.</summary>
/// <remarks>The controller's belief is exact: it computes with it.</remarks>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed class MixtureUncertainty
{
    /// <summary>Creates the uncertainties.</summary>
    /// <param name="flow">Of the fitted injector's flow, as a fraction of it; not negative.</param>
    /// <param name="deadTime">Of the fitted injector's dead time; not negative.</param>
    /// <param name="differentialPressure">Of the pressure across it; not negative.</param>
    /// <param name="density">Of the density of the fuel, as a fraction of it; not negative.</param>
    /// <param name="air">Of the air that the chamber gets, as a fraction of it; not negative.</param>
    /// <param name="stoichiometric">Of the stoichiometric ratio of the fuel, as a fraction of it; not negative.</param>
    /// <param name="source">Where they come from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative or not finite.</exception>
    public MixtureUncertainty(
        Ratio flow,
        Duration deadTime,
        Pressure differentialPressure,
        Ratio density,
        Ratio air,
        Ratio stoichiometric,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        FlowShare = Guard.NotNegative(flow, flow.InSi());
        Seconds = Guard.NotNegative(deadTime, deadTime.InSi());
        Pascals = Guard.NotNegative(differentialPressure, differentialPressure.InSi());
        DensityShare = Guard.NotNegative(density, density.InSi());
        AirShare = Guard.NotNegative(air, air.InSi());
        RatioShare = Guard.NotNegative(stoichiometric, stoichiometric.InSi());
        (Flow, DeadTime, DifferentialPressure) = (flow, deadTime, differentialPressure);
        (Density, Air, Stoichiometric, Source) = (density, air, stoichiometric, source);
    }

    /// <summary>Of the fitted injector's flow, as a fraction of it.</summary>
    public Ratio Flow { get; }

    /// <summary>Of the fitted injector's dead time.</summary>
    public Duration DeadTime { get; }

    /// <summary>Of the pressure across it.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>Of the density of the fuel, as a fraction of it.</summary>
    public Ratio Density { get; }

    /// <summary>Of the air that the chamber gets, as a fraction of it.</summary>
    public Ratio Air { get; }

    /// <summary>Of the stoichiometric ratio of the fuel, as a fraction of it.</summary>
    public Ratio Stoichiometric { get; }

    /// <summary>Where they come from.</summary>
    public DataSource Source { get; }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"flow {Flow}, dead time {DeadTime}, pressure {DifferentialPressure}");

    internal double FlowShare { get; }

    internal double Seconds { get; }

    internal double Pascals { get; }

    internal double DensityShare { get; }

    internal double AirShare { get; }

    internal double RatioShare { get; }
}
