using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>A tank and what it holds: a balance of masses, whatever the temperature at which each volume was measured.</summary>
/// <remarks>
/// <para>
/// Volumes are taken as additive at the tank's temperature. Ethanol in gasoline swells by a few tenths of a percent
/// (from memory): leave that much room, and room for warming besides. Filling gives a new tank; the old one stays as it
/// is.
/// </para>
/// </remarks>
public sealed class Tank
{
    private readonly ImmutableArray<(TankLiquid Liquid, double Mass)> parts;
    private readonly double kelvins;
    private readonly double capacity;

    private Tank(double capacity, double kelvins, ImmutableArray<(TankLiquid Liquid, double Mass)> parts)
    {
        this.capacity = capacity;
        this.kelvins = kelvins;
        this.parts = parts;
    }

    /// <summary>What it can hold.</summary>
    public Volume Capacity => SiUnits.Volume(capacity);

    /// <summary>The temperature of what it holds.</summary>
    public Temperature Temperature => SiUnits.Temperature(kelvins);

    /// <summary>What it holds, at its temperature.</summary>
    public Volume Held => SiUnits.Volume(HeldSi);

    /// <summary>What still goes in.</summary>
    public Volume Room => SiUnits.Volume(capacity - HeldSi);

    /// <summary>The mass of what it holds.</summary>
    public Mass Mass => SiUnits.Mass(parts.Sum(p => p.Mass));

    /// <summary>Volume of ethanol in a volume of what it holds, at 15 °C; none in an empty tank.</summary>
    public Ratio EthanolContent => SiUnits.Ratio(ContentSi(l => l.Ethanol));

    /// <summary>Volume of water in a volume of what it holds, at 15 °C; none in an empty tank.</summary>
    public Ratio WaterContent => SiUnits.Ratio(ContentSi(l => l.Water));

    /// <summary>Whether it holds nothing.</summary>
    public bool IsEmpty => parts.IsEmpty;

    internal double HeldSi => VolumeAt(kelvins);

    internal double ReferenceVolume => VolumeAt(TankLiquid.ReferenceKelvins);

    internal double CapacitySi => capacity;

    internal double Kelvins => kelvins;

    /// <summary>An empty tank.</summary>
    /// <param name="capacity">What it can hold; greater than zero.</param>
    /// <param name="temperature">The temperature of what it will hold.</param>
    /// <returns>The tank.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not greater than zero.</exception>
    public static Tank Empty(Volume capacity, Temperature temperature) =>
        new(Guard.Positive(capacity, capacity.InSi()), Guard.Positive(temperature, temperature.InSi()), []);

    /// <summary>The tank after a volume was put in.</summary>
    /// <param name="liquid">What.</param>
    /// <param name="volume">How much; not negative and not above the room.</param>
    /// <param name="measuredAt">The temperature at which the volume was measured.</param>
    /// <returns>The tank afterwards.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or does not go in.</exception>
    /// <exception cref="OutsideTableException">A density is not known at a temperature.</exception>
    public Tank Add(TankLiquid liquid, Volume volume, Temperature measuredAt)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        double mass = Guard.NotNegative(volume, volume.InSi()) * liquid.Fuel.Density.Law.At(measuredAt);
        double inTank = mass / liquid.Fuel.Density.Law.At(Temperature);
        if (!(inTank <= capacity - HeldSi + (Guard.EdgeTolerance * capacity)))
        {
            double most = (capacity - HeldSi) * volume.InSi() / inTank;
            throw Guard.OutOfRange(
                volume,
                $"at most {Guard.Show(SiUnits.Volume(most), volume.Unit)}, the room in the tank"
            );
        }

        return mass > 0 ? new(capacity, kelvins, parts.Add((liquid, mass))) : this;
    }

    /// <summary>The tank after some of what it holds, well mixed, was let out.</summary>
    /// <param name="volume">How much, at the tank's temperature; not above what it holds.</param>
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
    /// <param name="target">The content wanted.</param>
    /// <param name="liquid">What is at hand.</param>
    /// <param name="measuredAt">The temperature at which its volume will be measured.</param>
    /// <returns>What to add, and the tank afterwards.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It can't be reached; the message says what can.</exception>
    /// <exception cref="InvalidOperationException">The tank is empty, so that nothing is to be brought anywhere.</exception>
    /// <exception cref="OutsideTableException">A density is not known at a temperature.</exception>
    public TankFill Reach(Ratio target, TankLiquid liquid, Temperature measuredAt) =>
        TankSolver.Reach(this, target, liquid, measuredAt);

    /// <summary>The volumes of two liquids that fill the tank to a volume and bring it to an ethanol content.</summary>
    /// <param name="target">The content wanted.</param>
    /// <param name="finalVolume">The volume wanted in the tank, at its temperature.</param>
    /// <param name="first">What goes in first.</param>
    /// <param name="second">What goes in second.</param>
    /// <param name="measuredAt">The temperature at which their volumes will be measured.</param>
    /// <returns>What to add, step by step in that order, and the tank afterwards.</returns>
    /// <remarks>
    /// The order does not change the volumes; it changes what the tank holds between the steps, and when the second can is
    /// short. Put in first what mixes less readily, the denser ethanol last so that it sinks through.
    /// </remarks>
    /// <exception cref="ArgumentNullException">A liquid is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It can't be reached; the message says what can.</exception>
    /// <exception cref="ArgumentException">Both liquids have one ethanol content.</exception>
    /// <exception cref="OutsideTableException">A density is not known at a temperature.</exception>
    public TankFill FillTo(
        Ratio target,
        Volume finalVolume,
        TankLiquid first,
        TankLiquid second,
        Temperature measuredAt
    ) => TankSolver.FillTo(this, target, finalVolume, first, second, measuredAt);

    /// <summary>What the tank holds as a fuel.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <returns>The blend of all that was put in, by mass.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or has control characters.</exception>
    /// <exception cref="InvalidOperationException">The tank is empty.</exception>
    public Fuel ToFuel(string name)
    {
        if (IsEmpty)
        {
            throw new InvalidOperationException("An empty tank holds no fuel.");
        }

        double whole = parts.Sum(p => p.Mass);
        return FuelBlend.ByMass(
            name,
            [.. parts.Select(p => new FuelPart(p.Liquid.Fuel, SiUnits.Ratio(Math.Min(1, p.Mass / whole))))]
        );
    }

    /// <summary>What the tank holds as one liquid.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or has control characters.</exception>
    /// <exception cref="InvalidOperationException">The tank is empty.</exception>
    public TankLiquid ToLiquid(string name) => new(ToFuel(name), EthanolContent, WaterContent);

    /// <summary>Whether water in what the tank holds may fall out of it in the cold.</summary>
    /// <param name="coldest">The lowest temperature it will see.</param>
    /// <returns>A finding, or nothing when there is nothing to act on.</returns>
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
            throw new InvalidOperationException("An empty tank has no content to work out.");
        }

        Tank before = new(capacity, kelvins, parts.RemoveAt(parts.Length - 1));
        (TankLiquid liquid, double mass) = parts[^1];
        return TankBalance
            .ContentAfter(
                Traced.Input(TankSymbols.HeldContent, before.ContentSi(l => l.Ethanol)),
                Traced.Input(TankSymbols.HeldVolume, before.ReferenceVolume),
                Traced.Input(TankSymbols.AddedContent, liquid.Ethanol),
                Traced.Input(
                    TankSymbols.AddedVolume,
                    mass / liquid.Fuel.Density.Law.AtKelvins(TankLiquid.ReferenceKelvins)
                )
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
        foreach ((TankLiquid liquid, double mass) in parts)
        {
            volume += mass / liquid.Fuel.Density.Law.AtKelvins(at);
        }

        return volume;
    }

    private double ContentSi(Func<TankLiquid, double> content)
    {
        double volume = 0;
        double part = 0;
        foreach ((TankLiquid liquid, double mass) in parts)
        {
            double own = mass / liquid.Fuel.Density.Law.AtKelvins(TankLiquid.ReferenceKelvins);
            volume += own;
            part += own * content(liquid);
        }

        return volume > 0 ? part / volume : 0;
    }
}
