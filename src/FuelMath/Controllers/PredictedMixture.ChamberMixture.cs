using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class PredictedMixture
{
    /// <summary>Air and fuel of one cylinder or rotor in one working cycle.</summary>
    public sealed class ChamberMixture
    {
        private readonly double stoichiometric;

        private ChamberMixture(
            int chamber,
            Mass air,
            Mass fuel,
            Lambda? lambda,
            Lambda? ifOilUnburned,
            double stoichiometric
        )
        {
            this.stoichiometric = stoichiometric;
            LambdaIfOilUnburned = ifOilUnburned;
            Chamber = chamber;
            Air = air;
            Fuel = fuel;
            Lambda = lambda;
        }

        /// <summary>The cylinder or rotor, counted from 1.</summary>
        public int Chamber { get; }

        /// <summary>Air in one cycle.</summary>
        public Mass Air { get; }

        /// <summary>Fuel in one cycle.</summary>
        public Mass Fuel { get; }

        /// <summary>The mixture; null when there is no fuel. The oil of a premix counts as fuel that burns.</summary>
        public Lambda? Lambda { get; }

        /// <summary>
        /// The mixture if none of a premix's oil burns, the lean bound: the actual lambda lies between the two. The
        /// same as
        /// <see cref="Lambda"/> without oil; null when there is no fuel.
        /// </summary>
        public Lambda? LambdaIfOilUnburned { get; }

        /// <summary>The working of lambda from air and fuel: formula, inserted values, result, source.</summary>
        /// <returns>The working.</returns>
        /// <exception cref="InvalidOperationException">There is no fuel, and so no lambda.</exception>
        public Working LambdaWorking() =>
            Lambda is null
                ? throw new RefusedOperationException(
                    RefusalCode.NoFuel,
                    $"Chamber {Chamber:chamber} gets no fuel, so that it has no lambda."
                )
                : MixtureError
                    .MeanLambda<Traced>(
                        [Traced.Input(BeliefSymbols.Air, Air.InSi())],
                        [Traced.Input(Symbols.FuelMass, Fuel.InSi())],
                        Traced.Input(BeliefSymbols.Stoichiometric, stoichiometric)
                    )
                    .ToWorking();

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"chamber {Chamber}: {Air} air, {Fuel} fuel, {Lambda}");

        /// <summary>The mixture of a chamber, counted from 1; masses in kg.</summary>
        internal static ChamberMixture Of(int chamber, double air, double fuel, FuelMath.Fuel burned) =>
            new(
                chamber,
                SiUnits.Mass(air),
                SiUnits.Mass(fuel),
                MeanOf([air], [fuel], burned.StoichiometricRatio.Si),
                MeanOf([air], [fuel], burned.StoichiometricWithoutOilSi),
                burned.StoichiometricRatio.Si
            );

        /// <summary>Lambda as read by one sensor behind chambers; null when they get no fuel.</summary>
        internal static Lambda? MeanOf(ReadOnlySpan<double> air, ReadOnlySpan<double> fuel, double stoichiometric)
        {
            Span<Real> airs = stackalloc Real[air.Length];
            Span<Real> fuels = stackalloc Real[fuel.Length];
            double total = 0;
            for (int i = 0; i < air.Length; i++)
            {
                (airs[i], fuels[i]) = (new Real(air[i]), new Real(fuel[i]));
                total += fuel[i];
            }

            return total > 0 && stoichiometric > 0
                ? FuelMath.Lambda.FromRatio(MixtureError.MeanLambda<Real>(airs, fuels, new Real(stoichiometric)).Value)
                : null;
        }
    }
}
