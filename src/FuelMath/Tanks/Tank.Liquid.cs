using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class Tank
{
    /// <summary>A liquid in a tank: a fuel with its contents of ethanol and water.</summary>
    /// <remarks>
    /// Contents are the volume of the separate part over the volume of the whole, both at 15 °C; those of ethanol and
    /// water
    /// add up to slightly more than 100 %, because the two contract when mixed. Knock resistance is not modeled.
    /// </remarks>
    public sealed class Liquid
    {
        /// <summary>The reference temperature of contents, in K.</summary>
        internal const double ReferenceKelvins = 288.15;

        /// <summary>
        /// Tolerance of the oxygen in a fuel against that of its ethanol and water: densities of blends are rounded.
        /// </summary>
        private const double OxygenSlack = 0.002;

        /// <summary>Creates a liquid.</summary>
        /// <param name="fuel">The fuel as a whole, with its ethanol and water.</param>
        /// <param name="ethanolContent">Volume of ethanol in a volume of it, from 0 % to 100 %.</param>
        /// <param name="waterContent">Volume of water in a volume of it, from 0 % to 20 %.</param>
        /// <exception cref="ArgumentNullException"><paramref name="fuel"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A content is outside its range.</exception>
        /// <exception cref="ArgumentException">
        /// The fuel holds less oxygen than the stated ethanol and water contain.
        /// </exception>
        public Liquid(Fuel fuel, Ratio ethanolContent, Ratio waterContent)
        {
            ArgumentNullException.ThrowIfNull(fuel);
            Fuel = fuel;
            Ethanol = Guard.InRange(ethanolContent, ethanolContent.InSi(), 0, 1, SiUnits.Ratio);
            Water = Guard.InRange(waterContent, waterContent.InSi(), 0, 0.2, SiUnits.Ratio);
            double density = fuel.Density.Law.AtKelvins(ReferenceKelvins);
            double oxygen =
                (
                    (Ethanol * EthanolDensity * StandardFuels.Ethanol.Composition.OxygenFraction)
                    + (Water * WaterDensity * Combustion.Oxygen / (Combustion.Oxygen + (2 * Combustion.Hydrogen)))
                ) / density;
            if (!(oxygen <= fuel.Composition.OxygenFraction + OxygenSlack))
            {
                throw new RefusedArgumentException(
                    RefusalCode.TooMuchOxygen,
                    $"Must not bring more oxygen than the fuel holds; '{fuel.Name:part}' holds {Amount.Percent(fuel.Composition.OxygenFraction):most} by mass, and so much ethanol and water bring {Amount.Percent(oxygen):value}.",
                    nameof(ethanolContent)
                );
            }
        }

        /// <summary>The fuel as a whole.</summary>
        public Fuel Fuel { get; }

        /// <summary>Volume of ethanol in a volume of it, at 15 °C.</summary>
        public Ratio EthanolContent => SiUnits.Ratio(Ethanol);

        /// <summary>Volume of water in a volume of it, at 15 °C.</summary>
        public Ratio WaterContent => SiUnits.Ratio(Water);

        internal double Ethanol { get; }

        internal double Water { get; }

        private static double EthanolDensity => AlcoholTable.Density(new Real(1), new Real(15)).Value;

        private static double WaterDensity => AlcoholTable.Density(new Real(0), new Real(15)).Value;

        /// <summary>Ethanol without water.</summary>
        public static Liquid PureEthanol { get; } = new(StandardFuels.Ethanol, SiUnits.Ratio(1), SiUnits.Ratio(0));

        /// <summary>A fuel without ethanol and water.</summary>
        /// <param name="fuel">The fuel.</param>
        /// <returns>The liquid.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="fuel"/> is null.</exception>
        public static Liquid FromFuel(Fuel fuel) => new(fuel, SiUnits.Ratio(0), SiUnits.Ratio(0));

        /// <summary>Ethanol with water in it, by the separate volumes of both.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="mixture">Ethanol and water.</param>
        /// <returns>The liquid.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="mixture"/> is null.</exception>
        /// <exception cref="InvalidOperationException">It holds less than 80 % of ethanol by mass.</exception>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        public static Liquid FromHydrous(string name, EthanolWater mixture)
        {
            ArgumentNullException.ThrowIfNull(mixture);
            double mass = mixture.MassFraction.InSi();
            double density = AlcoholTable.Density(new Real(mass), new Real(15)).Value;
            return new(
                mixture.ToFuel(name),
                SiUnits.Ratio(mass * density / EthanolDensity),
                SiUnits.Ratio((1 - mass) * density / WaterDensity)
            );
        }

        /// <summary>A gasoline with ethanol in it, mixed at 15 °C.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="gasoline">The gasoline.</param>
        /// <param name="ethanolContent">Volume of ethanol in a volume of it, from 0 % to 100 %.</param>
        /// <returns>The liquid.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The content is outside its range.</exception>
        /// <exception cref="ArgumentException">The name is blank.</exception>
        public static Liquid FromGasoline(string name, Fuel gasoline, Ratio ethanolContent)
        {
            ArgumentNullException.ThrowIfNull(gasoline);
            double content = Guard.InRange(ethanolContent, ethanolContent.InSi(), 0, 1, SiUnits.Ratio);
            return new(
                FuelBlend.ByVolume(
                    name,
                    SiUnits.Temperature(ReferenceKelvins),
                    [new(StandardFuels.Ethanol, SiUnits.Ratio(content)), new(gasoline, SiUnits.Ratio(1 - content))]
                ),
                ethanolContent,
                SiUnits.Ratio(0)
            );
        }

        /// <summary>Gives the fuel's name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Fuel.Name;

        private static string Show(double fraction) =>
            Guard.Show(SiUnits.Ratio(Math.Round(fraction, 5)), UnitsNet.Units.RatioUnit.Percent);
    }
}
