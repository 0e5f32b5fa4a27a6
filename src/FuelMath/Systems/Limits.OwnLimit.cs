using UnitsNet;

namespace FuelMath;

public sealed partial class Limits
{
    /// <summary>
    /// A limit of the owner's in place of another, with the reason, which every finding that rests on it shows.
    /// </summary>
    public sealed class OwnLimit
    {
        /// <summary>Creates a limit.</summary>
        /// <param name="kind">Which limit.</param>
        /// <param name="value">Its value, a quantity of the kind that <see cref="Kind"/> says.</param>
        /// <param name="reason">Why; not blank.</param>
        /// <exception cref="ArgumentNullException"><paramref name="value"/> is null.</exception>
        /// <exception cref="ArgumentException">The reason is blank, or the value a quantity of another
        /// kind.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is none of the choices.</exception>
        public OwnLimit(Kind kind, IQuantity value, string reason)
        {
            ArgumentNullException.ThrowIfNull(value);
            Kind = Guard.Known(kind);
            Reason = Guard.Name(reason);
            Type wanted = kind switch
            {
                Kind.VoltageDrop => typeof(ElectricPotential),
                Kind.FeedVelocity or Kind.SuctionVelocity => typeof(Speed),
                Kind.VaporMargin => typeof(Pressure),
                _ => typeof(Ratio),
            };
            Value =
                value.GetType() == wanted
                    ? value
                    : throw new RefusedArgumentException(
                        RefusalCode.WrongKind,
                        $"The limit {kind:subject} must be of the kind {wanted.Name:allowed}; it was {value.GetType().Name:given}.",
                        nameof(value)
                    );
        }

        /// <summary>Which limit.</summary>
        public Kind Kind { get; }

        /// <summary>Its value.</summary>
        public IQuantity Value { get; }

        /// <summary>Why.</summary>
        public string Reason { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Kind}: {Value}");

        /// <summary>The reason as the source of a limit.</summary>
        internal DataSource Source => new("Owner", Reason);
    }
}
