using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class InjectorSwap
{
    /// <summary>A swap of injectors at one point: the correction left in, and its effect.</summary>
    public sealed class SwapPoint
    {
        private SwapPoint(
            MixturePoint point,
            ImmutableArray<Ratio> leftIn,
            ImmutableArray<PredictedMixture.ChamberMixture> before,
            ImmutableArray<PredictedMixture.ChamberMixture> after,
            ImmutableArray<Lambda?> seen
        ) => (Point, LeftIn, Before, After, SeenAfter) = (point, leftIn, before, after, seen);

        /// <summary>The operating point.</summary>
        public MixturePoint Point { get; }

        /// <summary>The factor on the fuel that the old set was tuned with, bank by bank in rising order.</summary>
        public ImmutableArray<Ratio> LeftIn { get; }

        /// <summary>The chambers with the old set and that factor.</summary>
        public ImmutableArray<PredictedMixture.ChamberMixture> Before { get; }

        /// <summary>The chambers with the new set and the old factor.</summary>
        public ImmutableArray<PredictedMixture.ChamberMixture> After { get; }

        /// <summary>
        /// The reading of each sensor with the new set and the old factor, uncorrected; null without fuel.
        /// </summary>
        public ImmutableArray<Lambda?> SeenAfter { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Point.Name}: {LeftIn.Length} corrections left in");

        internal static SwapPoint Of(FittedInjectors before, FittedInjectors after, MixturePoint point)
        {
            int[] banks = [.. before.Banks.Distinct().Order()];
            Ratio[] leftIn = [.. banks.Select(b => before.NeededCorrection(point, b))];
            var old = new PredictedMixture.ChamberMixture[before.ChamberCount];
            var next = new PredictedMixture.ChamberMixture[before.ChamberCount];
            var seen = new Lambda?[banks.Length];
            for (int b = 0; b < banks.Length; b++)
            {
                PredictedMixture was = before.OpenLoop(point, leftIn[b]);
                PredictedMixture becomes = after.OpenLoop(point, leftIn[b]);
                seen[b] = becomes.Banks[b].Lambda;
                foreach (int chamber in was.Banks[b].Chambers)
                {
                    (old[chamber - 1], next[chamber - 1]) = (was.Chambers[chamber - 1], becomes.Chambers[chamber - 1]);
                }
            }

            return new(point, [.. leftIn], [.. old], [.. next], [.. seen]);
        }
    }
}
