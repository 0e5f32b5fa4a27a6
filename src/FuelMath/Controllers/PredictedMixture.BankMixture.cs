using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class PredictedMixture
{
    /// <summary>The mixture read by one sensor behind its chambers, and the controller's correction.</summary>
    /// <remarks>
    /// The sensor reads total air over total fuel: with equal air the harmonic mean of the chambers' lambdas. The
    /// leanest
    /// chamber does not show.
    /// </remarks>
    public sealed class BankMixture
    {
        internal BankMixture(
            int bank,
            ImmutableArray<int> chambers,
            Lambda? lambda,
            Lambda? lambdaIfOilUnburned,
            Ratio correction,
            Ratio? remaining,
            bool isAtLimit,
            ImmutableArray<Duration> pulseWidths
        )
        {
            (Bank, Chambers, Lambda, Correction) = (bank, chambers, lambda, correction);
            LambdaIfOilUnburned = lambdaIfOilUnburned;
            (RemainingCorrection, IsAtLimit, PulseWidths) = (remaining, isAtLimit, pulseWidths);
        }

        /// <summary>The number of the bank.</summary>
        public int Bank { get; }

        /// <summary>Its chambers, counted from 1.</summary>
        public ImmutableArray<int> Chambers { get; }

        /// <summary>Total air over total fuel relative to stoichiometric; null without fuel.</summary>
        public Lambda? Lambda { get; }

        /// <summary>The same if none of a premix's oil burns, the lean bound; null without fuel.</summary>
        public Lambda? LambdaIfOilUnburned { get; }

        /// <summary>The factor on the fuel that the controller applied.</summary>
        public Ratio Correction { get; }

        /// <summary>
        /// The factor on the fuel still needed beyond the correction applied: lambda over the requested one. 100 % when
        /// the
        /// mixture is met; null without fuel.
        /// </summary>
        public Ratio? RemainingCorrection { get; }

        /// <summary>Whether the correction is at its limit.</summary>
        public bool IsAtLimit { get; }

        /// <summary>The width given to the injectors of each stage; zero for an inactive stage.</summary>
        public ImmutableArray<Duration> PulseWidths { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"bank {Bank}: {Lambda}, correction {Correction}");
    }
}
