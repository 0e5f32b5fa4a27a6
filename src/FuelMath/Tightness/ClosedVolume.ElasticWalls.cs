using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class ClosedVolume
{
    /// <summary>How the walls around a closed volume give way to pressure and temperature.</summary>
    public sealed class ElasticWalls
    {
        /// <summary>Describes walls.</summary>
        /// <param name="swelling">
        /// Relative increase of the enclosed volume per unit of pressure, over all hoses and tubes; zero for rigid walls.
        /// </param>
        /// <param name="expansion">
        /// Relative increase of the enclosed volume per kelvin, three times the linear expansion of the walls; not
        /// negative. Steel has 0.000035 (Source: [OpenStax-College-Physics] table of expansion), aluminum 0.00007, rubber
        /// and plastics up to 0.0006 (both from memory); gasoline has 0.0012.
        /// </param>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public ElasticWalls(Compressibility swelling, CoefficientOfThermalExpansion expansion)
        {
            Swells = Guard.NotNegative(swelling, swelling.InSi());
            Expands = Guard.NotNegative(expansion, expansion.InSi());
            (Swelling, Expansion) = (swelling, expansion);
        }

        /// <summary>Relative increase of the enclosed volume for each unit of pressure.</summary>
        public Compressibility Swelling { get; }

        /// <summary>Relative increase of the enclosed volume for each kelvin.</summary>
        public CoefficientOfThermalExpansion Expansion { get; }

        internal double Swells { get; }

        internal double Expands { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"swelling {Swelling}, expansion {Expansion}");
    }
}
