using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class VoltageDropTest
{
    /// <summary>One place of a meter's leads, and the expected reading.</summary>
    public sealed class TestPoint
    {
        internal TestPoint(string place, double ohms, double amperes, int feed)
        {
            Place = place;
            Ohms = ohms;
            Amperes = amperes;
            Feed = feed;
        }

        /// <summary>Where the leads are.</summary>
        public string Place { get; }

        /// <summary>The resistance between them.</summary>
        public ElectricResistance Resistance => SiUnits.ElectricResistance(Ohms);

        /// <summary>The current that flows there; positive from the first lead to the second.</summary>
        public ElectricCurrent Current => SiUnits.ElectricCurrent(Amperes);

        /// <summary>The expected reading of the meter.</summary>
        public ElectricPotential ExpectedDrop => SiUnits.ElectricPotential(Ohms * Amperes);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Place}: {ExpectedDrop} at {Current}");

        internal double Ohms { get; }

        internal double Amperes { get; }

        /// <summary>The circuit: 0 for what pumps share, then each pump's own.</summary>
        internal int Feed { get; }
    }
}
