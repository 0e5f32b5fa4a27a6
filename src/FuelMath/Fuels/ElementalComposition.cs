using System.Globalization;
using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>What a fuel is made of: mass fractions of carbon, hydrogen, oxygen, nitrogen and sulfur.</summary>
/// <remarks>
/// Stoichiometry follows from it and from the air model alone. Source of the atomic weights: [IUPAC-2021].
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class ElementalComposition
{
    /// <summary>
    /// Allowed difference of the sum of fractions from one: covers rounding of the input, not a missing element.
    /// </summary>
    internal const double SumTolerance = 1e-6;

    /// <summary>Molar masses, in kg/mol.</summary>
    internal const double HydrogenMass = Combustion.Hydrogen * 1e-3;
    internal const double CarbonMass = Combustion.Carbon * 1e-3;
    internal const double NitrogenMass = Combustion.Nitrogen * 1e-3;
    internal const double OxygenMass = Combustion.Oxygen * 1e-3;
    internal const double SulfurMass = Combustion.Sulfur * 1e-3;

    /// <summary>Creates a composition from mass fractions.</summary>
    /// <param name="carbon">Mass fraction of carbon.</param>
    /// <param name="hydrogen">Mass fraction of hydrogen.</param>
    /// <param name="oxygen">Mass fraction of oxygen.</param>
    /// <param name="nitrogen">Mass fraction of nitrogen.</param>
    /// <param name="sulfur">Mass fraction of sulfur.</param>
    /// <exception cref="ArgumentOutOfRangeException">A fraction is not from 0 % to 100 %.</exception>
    /// <exception cref="ArgumentException">The fractions do not add up to 100 %, or nothing in them burns.</exception>
    public ElementalComposition(Ratio carbon, Ratio hydrogen, Ratio oxygen, Ratio nitrogen, Ratio sulfur)
        : this(Fraction(carbon), Fraction(hydrogen), Fraction(oxygen), Fraction(nitrogen), Fraction(sulfur)) { }

    internal ElementalComposition(double carbon, double hydrogen, double oxygen, double nitrogen, double sulfur)
    {
        double sum = carbon + hydrogen + oxygen + nitrogen + sulfur;
        if (!(Math.Abs(sum - 1) <= SumTolerance))
        {
            throw new RefusedArgumentException(
                RefusalCode.Sum,
                $"Mass fractions of the elements must add up to {Amount.Percent(1):exactly}; they add up to {Amount.Percent(sum):value}, which is {Amount.Percent(Math.Abs(sum - 1)):difference} too {(sum < 1 ? "little" : "much"):side}.",
                nameof(carbon)
            );
        }

        CarbonFraction = carbon;
        HydrogenFraction = hydrogen;
        OxygenFraction = oxygen;
        NitrogenFraction = nitrogen;
        SulfurFraction = sulfur;
        double burns = carbon / CarbonMass + hydrogen / (4 * HydrogenMass) + sulfur / SulfurMass;

        // The tolerance also rejects an oxide that burns only by rounding.
        if (!(burns > oxygen / (2 * OxygenMass) * (1 + Guard.EdgeTolerance)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NothingBurns,
                "Must take up oxygen when it burns; this composition already holds as much as it can.",
                nameof(oxygen)
            );
        }
    }

    /// <summary>Mass fraction of carbon.</summary>
    public Ratio Carbon => SiUnits.Ratio(CarbonFraction);

    /// <summary>Mass fraction of hydrogen.</summary>
    public Ratio Hydrogen => SiUnits.Ratio(HydrogenFraction);

    /// <summary>Mass fraction of oxygen.</summary>
    public Ratio Oxygen => SiUnits.Ratio(OxygenFraction);

    /// <summary>Mass fraction of nitrogen.</summary>
    public Ratio Nitrogen => SiUnits.Ratio(NitrogenFraction);

    /// <summary>Mass fraction of sulfur.</summary>
    public Ratio Sulfur => SiUnits.Ratio(SulfurFraction);

    internal double CarbonFraction { get; }

    internal double HydrogenFraction { get; }

    internal double OxygenFraction { get; }

    internal double NitrogenFraction { get; }

    internal double SulfurFraction { get; }

    /// <summary>Mass of oxygen that burns a unit of mass completely.</summary>
    internal double OxygenDemandSi =>
        Combustion
            .OxygenDemand(
                new Real(CarbonFraction),
                new Real(HydrogenFraction),
                new Real(SulfurFraction),
                new Real(OxygenFraction)
            )
            .Value;

    /// <summary>Composition of a substance from its formula, for example 8, 18, 0, 0, 0 for C8H18.</summary>
    /// <param name="carbon">Atoms of carbon; not negative.</param>
    /// <param name="hydrogen">Atoms of hydrogen; not negative.</param>
    /// <param name="oxygen">Atoms of oxygen; not negative.</param>
    /// <param name="nitrogen">Atoms of nitrogen; not negative.</param>
    /// <param name="sulfur">Atoms of sulfur; not negative.</param>
    /// <returns>The composition.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative or above 1000.</exception>
    /// <exception cref="ArgumentException">Nothing in the formula burns.</exception>
    public static ElementalComposition FromFormula(int carbon, int hydrogen, int oxygen, int nitrogen, int sulfur) =>
        FromAtoms(
            Guard.InRange(carbon, 0, 1000),
            Guard.InRange(hydrogen, 0, 1000),
            Guard.InRange(oxygen, 0, 1000),
            Guard.InRange(nitrogen, 0, 1000),
            Guard.InRange(sulfur, 0, 1000)
        );

    /// <summary>Composition of a fuel known by its average formula CHyOz.</summary>
    /// <param name="hydrogenPerCarbon">Atoms of hydrogen for each atom of carbon, from 0 to 4.</param>
    /// <param name="oxygenPerCarbon">Atoms of oxygen for each atom of carbon, from 0 to 2.</param>
    /// <returns>The composition.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is outside its range.</exception>
    /// <exception cref="ArgumentException">Nothing in the formula burns.</exception>
    public static ElementalComposition FromAtomRatios(Ratio hydrogenPerCarbon, Ratio oxygenPerCarbon) =>
        FromAtoms(
            1,
            Guard.InRange(hydrogenPerCarbon, hydrogenPerCarbon.InSi(), 0, 4, SiUnits.Ratio),
            Guard.InRange(oxygenPerCarbon, oxygenPerCarbon.InSi(), 0, 2, SiUnits.Ratio),
            0,
            0
        );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"C {Carbon}, H {Hydrogen}, O {Oxygen}, N {Nitrogen}, S {Sulfur}");

    private static ElementalComposition FromAtoms(double c, double h, double o, double n, double s)
    {
        double mass = (c * CarbonMass) + (h * HydrogenMass) + (o * OxygenMass) + (n * NitrogenMass) + (s * SulfurMass);
        return mass > 0
            ? new(
                c * CarbonMass / mass,
                h * HydrogenMass / mass,
                o * OxygenMass / mass,
                n * NitrogenMass / mass,
                s * SulfurMass / mass
            )
            : throw new RefusedArgumentException(RefusalCode.Missing, "Must have at least one atom.", nameof(c));
    }

    private static double Fraction(Ratio value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        Guard.InRange(value, value.InSi(), 0, 1, SiUnits.Ratio, paramName);
}
