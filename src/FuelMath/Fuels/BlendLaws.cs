using FuelMath.Formulas;
using FuelMath.Scalars;
using FuelMath.Sources;

namespace FuelMath.Fuels;

/// <summary>The laws of a blend, made of those of its parts and their mass fractions.</summary>
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
                        $"that of '{fuel.Name}' is too low for the blending rule, "
                            + "which needs more than 0.2 mm²/s of every part."
                    );
                }
            }
        }

        private static T Index<T>(Fuel fuel, T kelvins)
            where T : struct, IScalar<T> => PetroleumViscosity.BlendingIndex(Kinematic(fuel, kelvins));

        private static T Kinematic<T>(Fuel fuel, T kelvins)
            where T : struct, IScalar<T> => fuel.Viscosity.Law.Read(kelvins) / fuel.Density.Law.Read(kelvins);
    }

    private static void CheckAll(TemperatureLaw[] parts, double kelvins)
    {
        foreach (TemperatureLaw part in parts)
        {
            part.Check(kelvins);
        }
    }
}
