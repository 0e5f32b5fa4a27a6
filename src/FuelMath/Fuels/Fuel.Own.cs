using UnitsNet;

namespace FuelMath;

/// <content>What else may be known of a fuel of one's own.</content>
public sealed partial class Fuel
{
    private SpecificEnergy? HeatingValue => lowerHeatingValue is { } known ? SiUnits.SpecificEnergy(known) : null;

    /// <summary>The same fuel with a lower heating value that was measured or worked out.</summary>
    /// <param name="value">Its lower heating value; greater than zero.</param>
    /// <returns>The fuel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not greater than zero.</exception>
    public Fuel WithLowerHeatingValue(SpecificEnergy value)
    {
        Guard.Positive(value, value.InSi(), part: Name);
        return With(value, OwnEstimates, Cautions);
    }

    /// <summary>The same fuel with what of its composition and heating value is an estimate.</summary>
    /// <param name="estimates">Sentences; they take the place of those before.</param>
    /// <returns>The fuel.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="estimates"/> is null.</exception>
    /// <exception cref="ArgumentException">A sentence is null.</exception>
    public Fuel WithEstimates(IEnumerable<string> estimates) => With(HeatingValue, estimates, Cautions);

    /// <summary>The same fuel with the hazards that it has.</summary>
    /// <param name="cautions">Sentences; they take the place of those before.</param>
    /// <returns>The fuel.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cautions"/> is null.</exception>
    /// <exception cref="ArgumentException">A sentence is null.</exception>
    public Fuel WithCautions(IEnumerable<string> cautions) => With(HeatingValue, OwnEstimates, cautions);

    private Fuel With(SpecificEnergy? heatingValue, IEnumerable<string> estimates, IEnumerable<string> cautions) =>
        new(Name, Composition, Density, Viscosity, VaporPressure, heatingValue, OwnSources, estimates, cautions)
        {
            HeatCapacity = HeatCapacity,
            BulkModulus = BulkModulus,
            Oil = Oil,
            Volatiles = Volatiles,
        };
}
