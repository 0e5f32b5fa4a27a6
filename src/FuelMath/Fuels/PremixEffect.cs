using UnitsNet;

namespace FuelMath;

/// <summary>What oil in the fuel does to lambda where nothing else changes: the same pulses at the same pressure.</summary>
/// <remarks>
/// Oil changes the density, so that an injector gives another mass, and the air that a mass asks for. How much of the oil burns
/// is not known; the truth lies between both bounds. Source: [White-2003] section 6.12 for the mass, with the root of density.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/EverydayExamples.cs" region="Premix" />
/// </example>
public sealed class PremixEffect
{
    private readonly double burned;
    private readonly double unburned;

    /// <summary>Sets a premix beside the fuel without oil.</summary>
    /// <param name="fuel">The fuel that the pulses were meant for.</param>
    /// <param name="premix">The same with oil.</param>
    /// <param name="temperature">The temperature of both at the injectors.</param>
    /// <exception cref="ArgumentNullException">A fuel is null.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature.</exception>
    public PremixEffect(Fuel fuel, Fuel premix, Temperature temperature)
    {
        burned = new FuelChange(fuel, premix, temperature).OpenTimeRatioAtEqualLambda.InSi();
        unburned = burned * premix.StoichiometricRatio.Si / premix.StoichiometricRatioIfOilUnburned.Si;
    }

    /// <summary>By what lambda is multiplied if all oil burns.</summary>
    public Ratio LambdaFactorIfOilBurns => SiUnits.Ratio(burned);

    /// <summary>By what lambda is multiplied if none of it burns: the lean bound.</summary>
    public Ratio LambdaFactorIfOilUnburned => SiUnits.Ratio(unburned);
}
