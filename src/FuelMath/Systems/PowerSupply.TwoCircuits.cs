using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public abstract partial class PowerSupply
{
    /// <summary>Two circuits: one feeds the pumps, the other the injectors.</summary>
    public sealed class TwoCircuits : PowerSupply
    {
        /// <summary>Creates two circuits.</summary>
        /// <param name="pumps">Feeds all pumps together.</param>
        /// <param name="injectors">Feeds all injectors together.</param>
        /// <exception cref="ArgumentNullException">Either is null.</exception>
        public TwoCircuits(Circuit pumps, Circuit injectors)
            : this(pumps, injectors, []) { }

        private TwoCircuits(Circuit pumps, Circuit injectors, ImmutableArray<PumpFeed> feeds)
            : base(feeds)
        {
            ArgumentNullException.ThrowIfNull(pumps);
            ArgumentNullException.ThrowIfNull(injectors);
            (Pumps, Injectors) = (pumps, injectors);
        }

        /// <summary>Feeds all pumps together that have no feed of their own.</summary>
        public Circuit Pumps { get; }

        /// <summary>Feeds all injectors together.</summary>
        public Circuit Injectors { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"circuits '{Pumps}' and '{Injectors}'");

        /// <summary>The circuit that pumps share, or that of a pump with its own.</summary>
        internal Circuit CircuitOf(int feed) => feed == 0 ? Pumps : Feeds[feed - 1].Circuit!;

        /// <summary>The same supply with another circuit: for the pumps that share one, or for one with its own.</summary>
        internal TwoCircuits With(int feed, Circuit circuit) =>
            feed == 0
                ? new(circuit, Injectors, Feeds)
                : new(Pumps, Injectors, Feeds.SetItem(feed - 1, new(Feeds[feed - 1].Line, circuit)));

        private protected override TwoCircuits FedBy(ImmutableArray<PumpFeed> feeds, string paramName) =>
            feeds.FirstOrDefault(f => f.Circuit is null) is { } stray
                ? throw new RefusedArgumentException(
                    RefusalCode.WrongKind,
                    $"Pump '{stray.Line:part}' must be fed by {"a circuit: there is no mesh":allowed}.",
                    paramName
                )
                : new(Pumps, Injectors, feeds);

        /// <inheritdoc />
        internal override (double Injectors, double Source) VoltsAt(
            ElectricPotential supply,
            ReadOnlySpan<double> amperes,
            double injectorConductance,
            Span<double> pumps
        )
        {
            for (int feed = 0; feed < pumps.Length; feed++)
            {
                pumps[feed] = supply.InSi() - (CircuitOf(feed).Resistance.InSi() * amperes[feed]);
            }

            return (supply.InSi() / (1 + (Injectors.Resistance.InSi() * injectorConductance)), supply.InSi());
        }
    }
}
