using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>
/// A tank and its contents, as a balance of masses: volumes may be measured at different temperatures.
/// </summary>
/// <remarks>
/// <para>
/// Volumes are assumed additive at the tank's temperature. Ethanol in gasoline swells by a few tenths of a percent
/// (from memory): leave room for that and for warming. Filling gives a new tank; the old one is unchanged.
/// </para>
/// </remarks>
/// <seealso href="../guide/tanks.html">Tanks</seealso>
public sealed partial class Tank
{
    private readonly ImmutableArray<(Liquid Liquid, double Mass)> parts;
    private readonly double kelvins;
    private readonly double capacity;

    private Tank(double capacity, double kelvins, ImmutableArray<(Liquid Liquid, double Mass)> parts)
    {
        this.capacity = capacity;
        this.kelvins = kelvins;
        this.parts = parts;
    }

    /// <summary>Its capacity.</summary>
    public Volume Capacity => SiUnits.Volume(capacity);

    /// <summary>The temperature of its contents.</summary>
    public Temperature Temperature => SiUnits.Temperature(kelvins);

    /// <summary>The volume of its contents, at its temperature.</summary>
    public Volume Held => SiUnits.Volume(HeldSi);

    /// <summary>The free volume.</summary>
    public Volume Room => SiUnits.Volume(capacity - HeldSi);

    /// <summary>The mass of its contents.</summary>
    public Mass Mass => SiUnits.Mass(parts.Sum(p => p.Mass));

    /// <summary>Volume fraction of ethanol in its contents, at 15 °C; zero for an empty tank.</summary>
    public Ratio EthanolContent => SiUnits.Ratio(ContentSi(l => l.Ethanol));

    /// <summary>Volume fraction of water in its contents, at 15 °C; zero for an empty tank.</summary>
    public Ratio WaterContent => SiUnits.Ratio(ContentSi(l => l.Water));

    /// <summary>Whether it is empty.</summary>
    public bool IsEmpty => parts.IsEmpty;

    internal double HeldSi => VolumeAt(kelvins);

    internal double ReferenceVolume => VolumeAt(Liquid.ReferenceKelvins);

    internal double CapacitySi => capacity;

    internal double Kelvins => kelvins;

    /// <summary>An empty tank.</summary>
    /// <param name="capacity">Its capacity; greater than zero.</param>
    /// <param name="temperature">The temperature of its future contents.</param>
    /// <returns>The tank.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not greater than zero.</exception>
    public static Tank Empty(Volume capacity, Temperature temperature) =>
        new(Guard.Positive(capacity, capacity.InSi()), Guard.Positive(temperature, temperature.InSi()), []);

    /// <summary>The tank after a volume was added.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="volume">The volume; not negative and not above the free volume.</param>
    /// <param name="measuredAt">The temperature at which the volume was measured.</param>
    /// <returns>The tank afterwards.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or above the free volume.</exception>
    /// <exception cref="OutsideTableException">A density is not known at a temperature.</exception>
    public Tank Add(Liquid liquid, Volume volume, Temperature measuredAt)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        double mass = Guard.NotNegative(volume, volume.InSi()) * liquid.Fuel.Density.Law.At(measuredAt);
        double inTank = mass / liquid.Fuel.Density.Law.At(Temperature);
        if (!(inTank <= capacity - HeldSi + (Guard.EdgeTolerance * capacity)))
        {
            double most = (capacity - HeldSi) * volume.InSi() / inTank;
            throw Guard.OutOfRange(volume, $"at most {SiUnits.Volume(most):most}, the room in the tank");
        }

        return mass > 0 ? new(capacity, kelvins, parts.Add((liquid, mass))) : this;
    }

    /// <summary>The tank after some of its well-mixed contents was drained.</summary>
    /// <param name="volume">The volume, at the tank's temperature; not above that of its contents.</param>
    /// <returns>The tank afterwards.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or more than it holds.</exception>
    public Tank Drain(Volume volume)
    {
        double held = HeldSi;
        double out_ = Guard.InRange(volume, volume.InSi(), 0, held, SiUnits.Volume);
        double rest = held > 0 ? 1 - (out_ / held) : 0;
        return new(capacity, kelvins, rest > 0 ? [.. parts.Select(p => (p.Liquid, p.Mass * rest))] : []);
    }

    /// <summary>The volume of one liquid that brings the tank to an ethanol content.</summary>
    /// <param name="target">The target content.</param>
    /// <param name="liquid">The liquid to add.</param>
    /// <param name="measuredAt">The temperature at which its volume will be measured.</param>
    /// <returns>The addition, and the tank afterwards.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The target can't be reached; the message gives the range that can.
    /// </exception>
    /// <exception cref="InvalidOperationException">The tank is empty.</exception>
    /// <exception cref="OutsideTableException">A density is not known at a temperature.</exception>
    public FillPlan Reach(Ratio target, Liquid liquid, Temperature measuredAt) =>
        TankSolver.Reach(this, target, liquid, measuredAt);

    /// <summary>The volumes of two liquids that fill the tank to a volume and bring it to an ethanol content.</summary>
    /// <param name="target">The target content.</param>
    /// <param name="finalVolume">The final volume in the tank, at its temperature.</param>
    /// <param name="first">The liquid added first.</param>
    /// <param name="second">The liquid added second.</param>
    /// <param name="measuredAt">The temperature at which their volumes will be measured.</param>
    /// <returns>The additions in that order, and the tank afterwards.</returns>
    /// <remarks>
    /// The order does not change the volumes, but the contents between the steps, and if the second liquid runs short.
    /// Add the denser ethanol last, so that it mixes while sinking.
    /// </remarks>
    /// <exception cref="ArgumentNullException">A liquid is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The target can't be reached; the message gives the range that can.
    /// </exception>
    /// <exception cref="ArgumentException">Both liquids have the same ethanol content.</exception>
    /// <exception cref="OutsideTableException">A density is not known at a temperature.</exception>
    public FillPlan FillTo(Ratio target, Volume finalVolume, Liquid first, Liquid second, Temperature measuredAt) =>
        TankSolver.FillTo(this, target, finalVolume, first, second, measuredAt);

    /// <summary>The contents of the tank as a fuel.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <returns>The blend of all additions, by mass.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or has control characters.</exception>
    /// <exception cref="InvalidOperationException">The tank is empty.</exception>
    public Fuel ToFuel(string name)
    {
        if (IsEmpty)
        {
            throw new RefusedOperationException(RefusalCode.TankEmpty, "An empty tank holds no fuel.");
        }

        double whole = parts.Sum(p => p.Mass);
        return FuelBlend.ByMass(
            name,
            [.. parts.Select(p => new FuelBlend.Part(p.Liquid.Fuel, SiUnits.Ratio(Math.Min(1, p.Mass / whole))))]
        );
    }

    /// <summary>The contents of the tank as one liquid.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or has control characters.</exception>
    /// <exception cref="InvalidOperationException">The tank is empty.</exception>
    public Liquid ToLiquid(string name) => new(ToFuel(name), EthanolContent, WaterContent);

    /// <summary>Whether water in the contents may separate in the cold.</summary>
    /// <param name="coldest">The lowest expected temperature.</param>
    /// <returns>A finding, or null when there is none.</returns>
    public Finding? PhaseSeparation(Temperature coldest) =>
        WaterTolerance.Assess(EthanolContent, WaterContent, coldest);

    /// <summary>
    /// The working of the ethanol content after the last filling: formula, inserted values, result, source.
    /// </summary>
    /// <returns>The working.</returns>
    /// <exception cref="InvalidOperationException">The tank is empty.</exception>
    public Working ContentWorking()
    {
        if (IsEmpty)
        {
            throw new RefusedOperationException(RefusalCode.TankEmpty, "An empty tank has no content to work out.");
        }

        Tank before = new(capacity, kelvins, parts.RemoveAt(parts.Length - 1));
        (Liquid liquid, double mass) = parts[^1];
        return TankBalance
            .ContentAfter(
                Traced.Input(TankSymbols.HeldContent, before.ContentSi(l => l.Ethanol)),
                Traced.Input(TankSymbols.HeldVolume, before.ReferenceVolume),
                Traced.Input(TankSymbols.AddedContent, liquid.Ethanol),
                Traced.Input(TankSymbols.AddedVolume, mass / liquid.Fuel.Density.Law.AtKelvins(Liquid.ReferenceKelvins))
            )
            .ToWorking();
    }

    /// <summary>Formats as level, capacity and ethanol content, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Guard.Show(Held, VolumeUnit.Liter)} of {Guard.Show(Capacity, VolumeUnit.Liter)}, "
        + $"{Guard.Show(SiUnits.Ratio(Math.Round(EthanolContent.InSi(), 6)), RatioUnit.Percent)} ethanol";

    private double VolumeAt(double at)
    {
        double volume = 0;
        foreach ((Liquid liquid, double mass) in parts)
        {
            volume += mass / liquid.Fuel.Density.Law.AtKelvins(at);
        }

        return volume;
    }

    private double ContentSi(Func<Liquid, double> content)
    {
        double volume = 0;
        double part = 0;
        foreach ((Liquid liquid, double mass) in parts)
        {
            double own = mass / liquid.Fuel.Density.Law.AtKelvins(Liquid.ReferenceKelvins);
            volume += own;
            part += own * content(liquid);
        }

        return volume > 0 ? part / volume : 0;
    }
}
