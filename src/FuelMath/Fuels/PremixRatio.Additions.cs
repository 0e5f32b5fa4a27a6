using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public readonly partial struct PremixRatio
{
    /// <summary>What to add to a tank.</summary>
    /// <remarks>The default value adds nothing.</remarks>
    public readonly struct Additions
    {
        private readonly double fuel;
        private readonly double oil;
        private readonly double after;
        private readonly double fraction;
        private readonly double before;
        private readonly double heldFraction;

        internal Additions(double fuel, double oil, double after, double fraction, double before, double heldFraction)
        {
            this.fuel = fuel;
            this.oil = oil;
            this.after = after;
            this.fraction = fraction;
            this.before = before;
            this.heldFraction = heldFraction;
        }

        /// <summary>Volume of fuel to add.</summary>
        public Volume Fuel => SiUnits.Volume(fuel);

        /// <summary>Volume of oil to add.</summary>
        public Volume Oil => SiUnits.Volume(oil);

        /// <summary>The working of the volume of oil: formula, inserted values, result, source.</summary>
        /// <returns>The working.</returns>
        public Working OilWorking() => Read(PremixBalance.MissingOil);

        /// <summary>The working of the volume of fuel: formula, inserted values, result, source.</summary>
        /// <returns>The working.</returns>
        public Working FuelWorking() => Read(PremixBalance.MissingFuel);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Fuel} fuel, {Oil} oil");

        private Working Read(Func<Traced, Traced, Traced, Traced, Traced> balance) =>
            balance(
                    Traced.Input(FuelSymbols.FinalVolume, after),
                    Traced.Input(FuelSymbols.OilFraction, fraction),
                    Traced.Input(FuelSymbols.HeldVolume, before),
                    Traced.Input(FuelSymbols.HeldOilFraction, heldFraction)
                )
                .ToWorking();
    }
}
