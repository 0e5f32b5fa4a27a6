using UnitsNet;

namespace FuelMath;

public readonly partial struct PremixRatio
{
    /// <summary>The effect of oil in the fuel on lambda, with the same pulses at the same pressure.</summary>
    /// <remarks>
    /// Oil changes the density, and with it the mass of a pulse, and the air that a mass of fuel needs. How much of the
    /// oil
    /// burns is not known; the actual effect lies between both bounds. Source: [White-2003] section 6.12 for the mass,
    /// which is proportional to the square root of density.
    /// </remarks>
    /// <example>
    /// <code source="../../../tests/FuelMath.Examples/EverydayExamples.cs" region="Premix" />
    /// </example>
    public sealed class MixtureEffect
    {
        private readonly double burned;
        private readonly double unburned;

        /// <summary>Compares a premix with the fuel without oil.</summary>
        /// <param name="fuel">The fuel that the pulses were meant for.</param>
        /// <param name="premix">The same with oil.</param>
        /// <param name="temperature">The temperature of both at the injectors.</param>
        /// <exception cref="ArgumentNullException">A fuel is null.</exception>
        /// <exception cref="OutsideTableException">A density is not known at the temperature.</exception>
        public MixtureEffect(Fuel fuel, Fuel premix, Temperature temperature)
        {
            ArgumentNullException.ThrowIfNull(fuel);
            ArgumentNullException.ThrowIfNull(premix);
            burned = new FuelChange(fuel, premix, temperature).OpenTimeRatioAtEqualLambda.InSi();
            unburned = burned * premix.StoichiometricRatio.Si / premix.StoichiometricWithoutOilSi;
        }

        /// <summary>Factor on lambda if all oil burns.</summary>
        public Ratio LambdaFactorIfOilBurns => SiUnits.Ratio(burned);

        /// <summary>Factor on lambda if no oil burns: the lean bound.</summary>
        public Ratio LambdaFactorIfOilUnburned => SiUnits.Ratio(unburned);

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of(
                $"lambda by {LambdaFactorIfOilBurns:1} where oil burns, {LambdaFactorIfOilUnburned:1} where not"
            );
    }
}
