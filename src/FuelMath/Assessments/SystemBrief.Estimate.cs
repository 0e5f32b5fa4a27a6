using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>An estimate of a value that is not given, with its usual range.</summary>
    /// <remarks>
    /// The ranges are those of ordinary cars: Source: [Common-practice] no single work. An unusual car may lie outside.
    /// </remarks>
    public sealed class Estimate
    {
        private Estimate(Input input, IQuantity value, IQuantity least, IQuantity greatest, string remedy) =>
            (Input, Value, Least, Greatest, Remedy) = (input, value, least, greatest, remedy);

        /// <summary>All estimates, in the order of <see cref="Input"/>.</summary>
        internal static ImmutableArray<Estimate> All { get; } =
        [
            Of(
                Input.VolumetricEfficiency,
                Percent,
                95,
                80,
                110,
                "Air mass or fuel flow logged at this speed and pressure."
            ),
            Of(Input.InjectorFlow, Percent, 100, 95, 105, "Flow of each injector on a bench."),
            Of(Input.DeadTime, Duration.FromMilliseconds, 0.9, 0.5, 1.5, "Dead time over voltage on a bench."),
            Of(Input.PumpCurrent, ElectricCurrent.FromAmperes, 10, 5, 16, "A clamp meter at the pump's supply."),
            Of(
                Input.CircuitResistance,
                ElectricResistance.FromMilliohms,
                40,
                15,
                120,
                "Voltage lost from battery to pump and back, over the current."
            ),
            Of(
                Input.SupplyVoltage,
                ElectricPotential.FromVolts,
                13.8,
                13,
                14.4,
                "A meter at the battery, engine running."
            ),
            Of(
                Input.FilterLoss,
                Pressure.FromKilopascals,
                10,
                2,
                40,
                "Pressure ahead of and behind the filter, pump running."
            ),
            Of(
                Input.FeedBore,
                Length.FromMillimeters,
                8,
                6,
                10,
                "The bore from the hose's standard, or a drill as a gauge."
            ),
            Of(Input.HoseLength, Length.FromMeters, 4, 1.5, 6, "A tape."),
            Of(
                Input.ReturnBore,
                Length.FromMillimeters,
                8,
                5,
                10,
                "The bore from the hose's standard, or a drill as a gauge."
            ),
            Of(
                Input.RegulatorSlope,
                Pressure.FromKilopascals,
                5,
                1,
                25,
                "Rail pressure at two flows through the regulator."
            ),
            Of(Input.FuelTemperature, Temperature.FromDegreesCelsius, 30, 5, 55, "A thermometer at the rail."),
            Of(Input.ChargeTemperature, Temperature.FromDegreesCelsius, 40, 15, 70, "A sensor in the manifold."),
        ];

        /// <summary>The estimated input.</summary>
        public Input Input { get; }

        /// <summary>The estimate.</summary>
        public IQuantity Value { get; }

        /// <summary>The low end of the range.</summary>
        public IQuantity Least { get; }

        /// <summary>The high end of the range.</summary>
        public IQuantity Greatest { get; }

        /// <summary>The measurement that replaces it.</summary>
        public string Remedy { get; }

        /// <summary>The source of the ranges.</summary>
        public static DataSource Source { get; } = new("Common-practice", "usual range of ordinary cars");

        /// <summary>Formats input, value and range as one line.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Words(Input)}, taken as {Shown(Value)} ({Shown(Least)} to {Shown(Greatest)})";

        /// <summary>Checks a quantity for an input and returns its number, SI.</summary>
        /// <exception cref="ArgumentException"><paramref name="quantity"/> is another kind of quantity.</exception>
        internal static double Number(
            Input input,
            IQuantity quantity,
            [CallerArgumentExpression(nameof(input))] string paramName = ""
        )
        {
            ArgumentNullException.ThrowIfNull(quantity, paramName);
            Type wanted = All[(int)Guard.Known(input)].Value.GetType();
            if (quantity.GetType() != wanted)
            {
                throw new RefusedArgumentException(
                    RefusalCode.WrongKind,
                    $"The {Words(input):subject} must be of the kind {wanted.Name:allowed}; it was {quantity.GetType().Name:given}.",
                    paramName
                );
            }

            double number = quantity switch
            {
                Ratio r => r.InSi(),
                Duration d => d.InSi(),
                ElectricCurrent c => c.InSi(),
                ElectricResistance r => r.InSi(),
                ElectricPotential v => v.InSi(),
                Pressure p => p.InSi(),
                Length l => l.InSi(),
                _ => ((Temperature)quantity).InSi(),
            };
            return number > 0 && double.IsFinite(number)
                ? number
                : throw Guard.Outside(
                    quantity,
                    RefusalCode.OutOfRange,
                    $"The {Words(input):subject} must be greater than zero; it was {quantity:value}.",
                    paramName
                );
        }

        /// <summary>An input in words.</summary>
        internal static string Words(Input input) =>
            string.Concat(
                input
                    .ToString()
                    .Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : $"{c}")
            );

        internal static string Shown(IQuantity quantity) => Guard.Show(quantity, quantity.Unit);

        private static Ratio Percent(QuantityValue value) => Ratio.FromPercent(value);

        private static Estimate Of<T>(
            Input input,
            Func<QuantityValue, T> make,
            double value,
            double least,
            double greatest,
            string remedy
        )
            where T : IQuantity => new(input, make(value), make(least), make(greatest), remedy);
    }
}
