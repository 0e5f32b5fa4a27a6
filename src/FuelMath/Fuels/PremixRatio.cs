using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Ratio of fuel to oil by volume for two-strokes: 32:1 is 32 parts of fuel and one of oil, 1/33 of the mix.
/// </summary>
/// <remarks>
/// Always by volume and always fuel to oil. Too little oil seizes an engine; excess oil displaces fuel, and its
/// unburned part makes the mixture leaner. The engine maker's ratio comes first. The default value is fuel without oil.
/// </remarks>
/// <seealso href="../guide/premix.html">Premix</seealso>
public readonly partial struct PremixRatio : IEquatable<PremixRatio>
{
    /// <summary>The greatest ratio of oil to fuel that counts as a premix.</summary>
    internal const double MostOilPerFuel = 1;

    /// <summary>Less than a drop in the tank of a ship.</summary>
    private const double LeastShown = 1e-9;

    private readonly double oilPerFuel;

    private PremixRatio(double oilPerFuel) => this.oilPerFuel = oilPerFuel;

    /// <summary>Fuel without oil.</summary>
    public static PremixRatio NoOil { get; }

    /// <summary>Volume of oil for each volume of fuel: 1/32 at 32:1.</summary>
    public Ratio OilPerFuel => SiUnits.Ratio(oilPerFuel);

    /// <summary>Volume of oil in a volume of the mix: 1/33 at 32:1.</summary>
    public Ratio OilFraction => SiUnits.Ratio(Fraction);

    internal double Fraction => PremixBalance.OilFraction(new Real(oilPerFuel)).Value;

    /// <summary>A ratio as on a bottle: parts of fuel to one of oil.</summary>
    /// <param name="fuelPartsPerOil">Parts of fuel, from 1 to 1000.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from 1 to 1000.</exception>
    public static PremixRatio FromParts(int fuelPartsPerOil) => new(1.0 / Guard.InRange(fuelPartsPerOil, 1, 1000));

    /// <summary>A ratio as oil for each volume of fuel: 2 % is 50:1.</summary>
    /// <param name="oilPerFuel">From 0 % to 100 %.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not from 0 % to 100 %.</exception>
    public static PremixRatio FromOilPerFuel(Ratio oilPerFuel) =>
        new(Guard.InRange(oilPerFuel, oilPerFuel.InSi(), 0, MostOilPerFuel, SiUnits.Ratio));

    /// <summary>The ratio of a mix of known volumes.</summary>
    /// <param name="fuel">Volume of fuel; greater than zero.</param>
    /// <param name="oil">Volume of oil, not above that of fuel.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    public static PremixRatio FromVolumes(Volume fuel, Volume oil)
    {
        double most = Guard.Positive(fuel, fuel.InSi());
        return new(Guard.InRange(oil, oil.InSi(), 0, most, SiUnits.Volume) / most);
    }

    /// <summary>Oil to add to a volume of fuel.</summary>
    /// <param name="fuel">Volume of fuel; not negative.</param>
    /// <returns>The volume of oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    public Volume OilFor(Volume fuel) =>
        SiUnits.Volume(PremixBalance.Oil(new Real(Guard.NotNegative(fuel, fuel.InSi())), new Real(oilPerFuel)).Value);

    /// <summary>The working of the oil for a volume of fuel: formula, inserted values, result, source.</summary>
    /// <param name="fuel">Volume of fuel; not negative.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    /// <exception cref="FormatException">The format is not one of a number.</exception>
    public Working OilWorkingFor(Volume fuel) =>
        PremixBalance
            .Oil(
                ReaderUnits.Input(FuelSymbols.FuelVolume, fuel, Guard.NotNegative(fuel, fuel.InSi())),
                Traced.Input(FuelSymbols.OilPerFuel, oilPerFuel)
            )
            .ToWorking();

    /// <summary>Oil in a volume of the mix.</summary>
    /// <param name="mix">Volume of the mix; not negative.</param>
    /// <returns>The volume of oil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    public Volume OilIn(Volume mix) => SiUnits.Volume(Guard.NotNegative(mix, mix.InSi()) * Fraction);

    /// <summary>The fuel and oil that bring a tank, which still holds mix of a known ratio, to this ratio.</summary>
    /// <param name="remaining">Volume in the tank; not negative.</param>
    /// <param name="remainingRatio">What is in the tank; <see cref="NoOil"/> for fuel alone.</param>
    /// <param name="finalVolume">Volume in the tank afterwards; not below <paramref name="remaining"/>.</param>
    /// <returns>Fuel and oil to add, each from its balance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A volume is outside its range, or the tank already holds more oil or more fuel than the full tank may.
    /// </exception>
    public Additions TopUp(Volume remaining, PremixRatio remainingRatio, Volume finalVolume)
    {
        double before = Guard.NotNegative(remaining, remaining.InSi());
        double after = finalVolume.InSi();
        if (!(after >= before && double.IsFinite(after)))
        {
            throw Guard.OutOfRange(finalVolume, $"at least what is in the tank, {remaining:least}");
        }

        Real[] balance = [new(after), new(Fraction), new(before), new(remainingRatio.Fraction)];
        double oil = PremixBalance.MissingOil(balance[0], balance[1], balance[2], balance[3]).Value;
        double fuel = PremixBalance.MissingFuel(balance[0], balance[1], balance[2], balance[3]).Value;
        double rounding = Guard.EdgeTolerance * after;
        if (oil < -rounding)
        {
            double enough = before * remainingRatio.Fraction / Fraction;
            throw double.IsFinite(enough)
                ? Guard.OutOfRange(
                    finalVolume,
                    $"at least {SiUnits.Volume(enough):least}, because the tank already holds more oil than {ToString():other} allows"
                )
                : Guard.Outside(
                    finalVolume,
                    RefusalCode.DrainFirst,
                    $"Must be reached without oil, and the tank already holds some: drain it; it was {finalVolume:value}."
                );
        }

        if (fuel < -rounding)
        {
            double enough = before * (1 - remainingRatio.Fraction) / (1 - Fraction);
            throw Guard.OutOfRange(
                finalVolume,
                $"at least {SiUnits.Volume(enough):least}, because the tank already holds more fuel than {ToString():other} allows"
            );
        }

        return new(Math.Max(0, fuel), Math.Max(0, oil), after, Fraction, before, remainingRatio.Fraction);
    }

    /// <summary>The ratio after fuel and oil were added to a remainder of this ratio.</summary>
    /// <param name="remaining">Volume in the tank; not negative.</param>
    /// <param name="fuel">Volume of fuel added; not negative.</param>
    /// <param name="oil">Volume of oil added; not negative.</param>
    /// <returns>The ratio of the whole.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A volume is negative, there is no fuel at all, or there is more oil than fuel.
    /// </exception>
    public PremixRatio AfterAdding(Volume remaining, Volume fuel, Volume oil)
    {
        double before = Guard.NotNegative(remaining, remaining.InSi());
        double allFuel = (before * (1 - Fraction)) + Guard.NotNegative(fuel, fuel.InSi());
        double allOil = (before * Fraction) + Guard.NotNegative(oil, oil.InSi());
        if (!(allFuel > 0))
        {
            throw Guard.OutOfRange(
                fuel,
                $"more than {SiUnits.Volume(0):above} where the tank holds none: oil alone is no mix"
            );
        }

        if (allOil > allFuel)
        {
            throw Guard.OutOfRange(
                oil,
                $"at most {SiUnits.Volume(allFuel - (before * Fraction)):most} into this tank, so that there is no more oil than fuel"
            );
        }

        return FromVolumes(SiUnits.Volume(allFuel), SiUnits.Volume(allOil));
    }

    /// <summary>The mix as a fuel: density, viscosity and stoichiometry follow from both parts.</summary>
    /// <param name="name">The mix's name; not blank.</param>
    /// <param name="fuel">The fuel.</param>
    /// <param name="oil">The oil.</param>
    /// <param name="mixedAt">The temperature at which the volumes are measured.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fuel"/> or <paramref name="oil"/> is null.</exception>
    /// <exception cref="OutsideTableException">A density is not known at the temperature of mixing.</exception>
    /// <exception cref="ArgumentException">An argument does not fit; the message says why.</exception>
    public Fuel ToFuel(string name, Fuel fuel, Fuel oil, Temperature mixedAt)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(oil);
        return FuelBlend.Mix(
            name,
            mixedAt,
            [
                new FuelBlend.Part(fuel, SiUnits.Ratio(1 - Fraction)),
                new FuelBlend.Part(oil.AsOil(), SiUnits.Ratio(Fraction)),
            ],
            new PremixRecipe(this, fuel, oil, mixedAt)
        );
    }

    /// <summary>Whether both are the same number.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator ==(PremixRatio left, PremixRatio right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public static bool operator !=(PremixRatio left, PremixRatio right) => !left.Equals(right);

    /// <inheritdoc />
    public bool Equals(PremixRatio other) => oilPerFuel.Equals(other.oilPerFuel);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is PremixRatio other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => oilPerFuel.GetHashCode();

    /// <summary>Formats as fuel to oil, for example <c>32:1</c>, invariant culture.</summary>
    /// <returns>The text; <c>no oil</c> for fuel alone.</returns>
    public override string ToString() =>
        oilPerFuel >= LeastShown ? string.Create(CultureInfo.InvariantCulture, $"{1 / oilPerFuel:0.##}:1") : "no oil";
}
