using UnitsNet;

namespace FuelMath;

public sealed partial class MixtureDiagnosis
{
    /// <summary>A test that distinguishes two causes, with the predictions of both.</summary>
    /// <remarks>
    /// Caution: keep to pressures that every part allows, to light load, and to a mixture no leaner than intended.
    /// </remarks>
    public sealed class DecidingTest
    {
        internal DecidingTest(
            DecidingTestKind kind,
            string what,
            string? point,
            int? chamber,
            Ratio? ifThis,
            Ratio? ifOther,
            Ratio? separation
        )
        {
            (Kind, What, Point, Chamber) = (kind, what, point, chamber);
            (FactorIfThis, FactorIfOther, Separation) = (ifThis, ifOther, separation);
        }

        /// <summary>The kind of test.</summary>
        public DecidingTestKind Kind { get; }

        /// <summary>The instruction, and what to look for.</summary>
        public string What { get; }

        /// <summary>
        /// The observation to repeat, where the two differ most; null for a measurement without the engine.
        /// </summary>
        public string? Point { get; }

        /// <summary>The chamber to read there, counted from 1; null where none is.</summary>
        public int? Chamber { get; }

        /// <summary>
        /// Lambda over the target predicted there by this cause, with the same correction; null without a prediction.
        /// </summary>
        public Ratio? FactorIfThis { get; }

        /// <summary>Lambda over the target predicted there by the other cause; null without a prediction.</summary>
        public Ratio? FactorIfOther { get; }

        /// <summary>
        /// The difference of the two, in standard uncertainties of that reading; null without a prediction.
        /// </summary>
        public Ratio? Separation { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Kind}: {What}");
    }
}
