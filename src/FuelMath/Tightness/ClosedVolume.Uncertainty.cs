using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class ClosedVolume
{
    /// <summary>Standard uncertainties of what a closed volume is made of.</summary>
    public sealed class Uncertainty
    {
        /// <summary>Creates the uncertainties.</summary>
        /// <param name="fuelVolume">Of the volume of fuel, as a fraction of it; not negative.</param>
        /// <param name="bulkModulus">Of the bulk modulus, as a fraction of it; not negative.</param>
        /// <param name="swelling">Of the swelling of the walls, as a fraction of it; not negative.</param>
        /// <param name="fuelExpansion">Of the expansion of the fuel, as a fraction of it; not negative.</param>
        /// <param name="wallExpansion">Of the expansion of the walls, as a fraction of it; not negative.</param>
        /// <param name="gas">Of the volume of gas at ambient pressure; not negative.</param>
        /// <exception cref="ArgumentOutOfRangeException">A number is negative or not finite.</exception>
        public Uncertainty(
            Ratio fuelVolume,
            Ratio bulkModulus,
            Ratio swelling,
            Ratio fuelExpansion,
            Ratio wallExpansion,
            Volume gas
        )
        {
            FuelShare = Guard.NotNegative(fuelVolume, fuelVolume.InSi());
            ModulusShare = Guard.NotNegative(bulkModulus, bulkModulus.InSi());
            SwellingShare = Guard.NotNegative(swelling, swelling.InSi());
            FuelExpansionShare = Guard.NotNegative(fuelExpansion, fuelExpansion.InSi());
            WallExpansionShare = Guard.NotNegative(wallExpansion, wallExpansion.InSi());
            GasVolume = Guard.NotNegative(gas, gas.InSi());
            (FuelVolume, BulkModulus, Swelling) = (fuelVolume, bulkModulus, swelling);
            (FuelExpansion, WallExpansion, Gas) = (fuelExpansion, wallExpansion, gas);
        }

        /// <summary>Of the volume of fuel.</summary>
        public Ratio FuelVolume { get; }

        /// <summary>Of the bulk modulus.</summary>
        public Ratio BulkModulus { get; }

        /// <summary>Of the swelling of the walls.</summary>
        public Ratio Swelling { get; }

        /// <summary>Of the expansion of the fuel.</summary>
        public Ratio FuelExpansion { get; }

        /// <summary>Of the expansion of the walls.</summary>
        public Ratio WallExpansion { get; }

        /// <summary>Of the volume of gas at ambient pressure.</summary>
        public Volume Gas { get; }

        internal double FuelShare { get; }

        internal double ModulusShare { get; }

        internal double SwellingShare { get; }

        internal double FuelExpansionShare { get; }

        internal double WallExpansionShare { get; }

        internal double GasVolume { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"fuel {FuelVolume}, bulk modulus {BulkModulus}, gas {Gas}");
    }
}
