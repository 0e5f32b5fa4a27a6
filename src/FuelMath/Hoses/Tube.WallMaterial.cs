using UnitsNet;

namespace FuelMath;

public sealed partial class Tube
{
    /// <summary>The material of a hard line: its elasticity, and the stress that the caller allows.</summary>
    /// <remarks>
    /// The library has no table of materials: strength depends on alloy, temper and temperature; use their data sheet.
    /// </remarks>
    public sealed class WallMaterial
    {
        /// <summary>Describes a material.</summary>
        /// <param name="name">Its name in messages; not blank.</param>
        /// <param name="elasticModulus">Modulus of elasticity; greater than zero.</param>
        /// <param name="poissonRatio">Poisson's ratio; 0 to 0.5.</param>
        /// <param name="allowedStress">
        /// The hoop stress that the wall may carry, at its temperature and with the caller's margin; greater than zero.
        /// </param>
        /// <param name="source">Where the numbers come from.</param>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        public WallMaterial(
            string name,
            Pressure elasticModulus,
            Ratio poissonRatio,
            Pressure allowedStress,
            DataSource source
        )
        {
            Name = Guard.Name(name);
            ArgumentNullException.ThrowIfNull(source);
            Guard.Positive(elasticModulus, elasticModulus.InSi(), part: name);
            Guard.InRange(poissonRatio, poissonRatio.InSi(), 0, 0.5, SiUnits.Ratio, part: name);
            Guard.Positive(allowedStress, allowedStress.InSi(), part: name);
            (ElasticModulus, PoissonRatio, AllowedStress, Source) = (
                elasticModulus,
                poissonRatio,
                allowedStress,
                source
            );
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>Modulus of elasticity.</summary>
        public Pressure ElasticModulus { get; }

        /// <summary>Poisson's ratio.</summary>
        public Ratio PoissonRatio { get; }

        /// <summary>The hoop stress that the wall may carry.</summary>
        public Pressure AllowedStress { get; }

        /// <summary>Where the numbers come from.</summary>
        public DataSource Source { get; }

        /// <inheritdoc />
        public override string ToString() => Name;
    }
}
