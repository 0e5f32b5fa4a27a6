using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The laws of a blend, from those of its parts and their mass fractions.</summary>
internal static class BlendLaws
{
    private static readonly Symbol DensityStep = new(
        "rhob",
        "kg/m3",
        "density of the blend, volumes taken as additive"
    );

    private static readonly DataSource DensitySource = new("Definition", "masses over volumes");

    private static readonly Symbol ViscosityStep = new("mub", "Pa s", "dynamic viscosity of the blend, an estimate");

    private static readonly DataSource ViscositySource = new("Maples-2000", "viscosity blending index");

    private static readonly Symbol HeatCapacityStep = new(
        "cpb",
        "J/(kg K)",
        "isobaric heat capacity of the blend, mixing without heat"
    );

    private static readonly Symbol BulkModulusStep = new(
        "KTb",
        "Pa",
        "isothermal bulk modulus of the blend, volumes taken as additive"
    );

    private static readonly Symbol ClassStep = new("pvc", "Pa", "vapor pressure, the most that the class allows");

    private static readonly DataSource BulkModulusSource = new("Definition", "sum of the compressibilities by volume");

    private static readonly DataSource HeatCapacitySource = new("Definition", "sum over the masses");

    internal sealed class Density(TemperatureLaw[] parts, double[] fractions) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            T volume = fractions[0] / parts[0].Read(kelvins);
            for (int i = 1; i < parts.Length; i++)
            {
                volume += fractions[i] / parts[i].Read(kelvins);
            }

            return T.Step(1 / volume, DensityStep, DensitySource);
        }

        internal override void Check(double kelvins) => CheckAll(parts, kelvins);
    }

    internal sealed class HeatCapacity(TemperatureLaw[] parts, double[] fractions) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            T sum = fractions[0] * parts[0].Read(kelvins);
            for (int i = 1; i < parts.Length; i++)
            {
                sum += fractions[i] * parts[i].Read(kelvins);
            }

            return T.Step(sum, HeatCapacityStep, HeatCapacitySource);
        }

        internal override void Check(double kelvins) => CheckAll(parts, kelvins);
    }

    internal sealed class Viscosity(Fuel[] fuels, double[] fractions, TemperatureLaw blend) : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            T index = fractions[0] * Index(fuels[0], kelvins);
            for (int i = 1; i < fuels.Length; i++)
            {
                index += fractions[i] * Index(fuels[i], kelvins);
            }

            return T.Step(
                PetroleumViscosity.FromBlendingIndex(index) * blend.Read(kelvins),
                ViscosityStep,
                ViscositySource
            );
        }

        internal override void Check(double kelvins)
        {
            blend.Check(kelvins);
            foreach (Fuel fuel in fuels)
            {
                fuel.Viscosity.Law.Check(kelvins);
                if (!(Kinematic(fuel, new Real(kelvins)).Value > PetroleumViscosity.LowestKinematicViscosityOfIndex))
                {
                    throw new UnknownPropertyException(
                        "The viscosity of the blend",
                        $"that of '{fuel.Name:part}' is too low for the blending rule, which needs more than {new Amount(0.2, "mm²/s"):above} of every part.",
                        nameof(Fuel.Viscosity)
                    );
                }
            }
        }

        private static T Index<T>(Fuel fuel, T kelvins)
            where T : struct, IScalar<T> => PetroleumViscosity.BlendingIndex(Kinematic(fuel, kelvins));

        private static T Kinematic<T>(Fuel fuel, T kelvins)
            where T : struct, IScalar<T> => fuel.Viscosity.Law.Read(kelvins) / fuel.Density.Law.Read(kelvins);
    }

    internal sealed class BulkModulus(TemperatureLaw[] moduli, TemperatureLaw[] densities, double[] fractions)
        : PropertyLaw
    {
        internal override T At<T>(T kelvins)
        {
            T volume = fractions[0] / densities[0].Read(kelvins);
            T yielding = volume / moduli[0].Read(kelvins);
            for (int i = 1; i < moduli.Length; i++)
            {
                T part = fractions[i] / densities[i].Read(kelvins);
                volume += part;
                yielding += part / moduli[i].Read(kelvins);
            }

            return T.Step(volume / yielding, BulkModulusStep, BulkModulusSource);
        }

        /// <summary>
        /// The greatest error of the parts, and at least 2 %, for pure parts and volumes that are not additive.
        /// </summary>
        internal override double ErrorAt(double kelvins) => Math.Max(0.02, moduli.Max(m => m.ErrorAtKelvins(kelvins)));

        internal override void Check(double kelvins)
        {
            CheckAll(moduli, kelvins);
            CheckAll(densities, kelvins);
        }
    }

    internal sealed class GasolineVapor : PropertyLaw
    {
        /// <summary>5 %, from a calculation with eight hydrocarbons at 37.8 °C for all contents of ethanol.</summary>
        private const double OwnError = 0.05;

        private readonly VaporPart[] gasolines;
        private readonly TemperatureLaw? ethanol;
        private readonly double ethanolFraction;
        private readonly double[] shares;

        internal GasolineVapor(VaporPart[] parts)
        {
            VaporPart[] alcohol = [.. parts.Where(p => p.IsEthanol)];
            gasolines = [.. parts.Where(p => !p.IsEthanol)];
            ethanol = alcohol.Length > 0 ? alcohol[0].Pressure : null;
            ethanolFraction = alcohol.Sum(p => p.Amount) / parts.Sum(p => p.Amount);
            double rest = gasolines.Sum(p => p.Amount);
            shares = [.. gasolines.Select(p => p.Amount / rest)];
        }

        internal override T At<T>(T kelvins)
        {
            T gasoline = T.Of(0);
            for (int i = 0; i < gasolines.Length; i++)
            {
                gasoline += shares[i] * gasolines[i].Pressure.Read(kelvins);
            }

            return ethanol is null
                ? gasoline
                : VaporPressure.GasolineWithEthanol(T.Of(ethanolFraction), ethanol.Read(kelvins), gasoline, kelvins);
        }

        internal override double ErrorAt(double kelvins) =>
            OwnError + gasolines.Select(p => p.Pressure.ErrorAtKelvins(kelvins)).DefaultIfEmpty().Max();
    }

    /// <summary>The vapor pressure of a blend, raised to what its class allows.</summary>
    internal sealed class ClassVapor(TemperatureLaw blend, double factor) : PropertyLaw
    {
        internal override T At<T>(T kelvins) => T.Step(factor * blend.Read(kelvins), ClassStep, E85Class.Source);

        internal override double ErrorAt(double kelvins) => blend.ErrorAtKelvins(kelvins);

        internal override void Check(double kelvins) => blend.Check(kelvins);
    }

    private static void CheckAll(TemperatureLaw[] parts, double kelvins)
    {
        foreach (TemperatureLaw part in parts)
        {
            part.Check(kelvins);
        }
    }
}
