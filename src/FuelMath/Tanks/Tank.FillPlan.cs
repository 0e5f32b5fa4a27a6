using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath;

public sealed partial class Tank
{
    /// <summary>The filling of a tank to a content: the additions step by step, and the tank afterwards.</summary>
    public sealed class FillPlan
    {
        private readonly Func<Traced> volume;

        internal FillPlan(ImmutableArray<FillStep> steps, Func<Traced> volume)
        {
            Steps = steps;
            this.volume = volume;
        }

        /// <summary>The additions, in order.</summary>
        public ImmutableArray<FillStep> Steps { get; }

        /// <summary>The tank afterwards.</summary>
        public Tank Result => Steps[^1].After;

        /// <summary>
        /// The working of the volume of the first step, at 15 °C: formula, inserted values, result, source.
        /// </summary>
        /// <returns>The working.</returns>
        public Working ToWorking() => volume().ToWorking();

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Steps.Length} steps to {Result}");
    }
}
