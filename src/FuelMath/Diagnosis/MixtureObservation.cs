using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// An observation of a running engine at one steady point: conditions, commanded pulses with the correction included,
/// and lambda by bank or by chamber.
/// </summary>
/// <remarks>The air mass is not needed: the air believed by the controller follows from width and correction.</remarks>
/// <seealso href="../guide/diagnosis.html">Diagnosis</seealso>
public sealed partial class MixtureObservation
{
    /// <summary>Creates an observation.</summary>
    /// <param name="name">The name of the point; not blank.</param>
    /// <param name="cycle">Time of one working cycle of a chamber; greater than zero.</param>
    /// <param name="target">The target lambda of the controller.</param>
    /// <param name="manifold">Absolute manifold pressure; greater than zero.</param>
    /// <param name="ambient">Absolute ambient pressure; greater than zero.</param>
    /// <param name="injectors">
    /// What the injectors work at: the pressures as the controller believes them, the temperature of the fuel, and the
    /// voltage at the injectors and at the controller.
    /// </param>
    /// <param name="banks">The reading of each bank; one or more. Copied.</param>
    /// <exception cref="ArgumentException">The name is blank, there is no bank, or one occurs twice.</exception>
    /// <exception cref="ArgumentNullException">Injectors or banks are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public MixtureObservation(
        string name,
        Duration cycle,
        Lambda target,
        AbsolutePressure manifold,
        AbsolutePressure ambient,
        InjectorConditions injectors,
        IEnumerable<BankReading> banks
    )
    {
        ArgumentNullException.ThrowIfNull(injectors);
        ArgumentNullException.ThrowIfNull(banks);
        Name = Guard.Name(name);
        Guard.Positive(cycle, cycle.InSi(), part: name);
        Guard.Positive(target.Si, nameof(target), part: name);
        Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold), part: name);
        Guard.Positive(ambient.AboveVacuum, ambient.Si, nameof(ambient), part: name);
        BelievedDifferentialPressures = injectors.DifferentialPressures;
        Banks = [.. Lists.NoNulls(banks)];
        Guard.AtLeast(1, Banks.Length, "An observation (its banks)", nameof(banks), part: name);
        Guard.DifferentNames(Banks.Select(b => $"bank {b.Bank}"), nameof(banks), part: name);
        (Cycle, Target, Manifold, Ambient) = (cycle, target, manifold, ambient);
        (FuelTemperature, AtInjectors, AtController) = (
            injectors.FuelTemperature,
            injectors.Voltage,
            injectors.Voltage
        );
        (MeasuredDifferentialPressures, ChamberAir, Chambers) = ([], [], []);
    }

    private MixtureObservation(MixtureObservation other)
    {
        (Name, Cycle, Target, Manifold, Ambient) = (
            other.Name,
            other.Cycle,
            other.Target,
            other.Manifold,
            other.Ambient
        );
        (FuelTemperature, AtInjectors, AtController) = (other.FuelTemperature, other.AtInjectors, other.AtController);
        BelievedDifferentialPressures = other.BelievedDifferentialPressures;
        MeasuredDifferentialPressures = other.MeasuredDifferentialPressures;
        (ChamberAir, Banks, Chambers) = (other.ChamberAir, other.Banks, other.Chambers);
    }

    /// <summary>The name of the point.</summary>
    public string Name { get; }

    /// <summary>Time of one working cycle of a chamber.</summary>
    public Duration Cycle { get; }

    /// <summary>The target lambda of the controller.</summary>
    public Lambda Target { get; }

    /// <summary>Absolute manifold pressure.</summary>
    public AbsolutePressure Manifold { get; }

    /// <summary>Absolute ambient pressure.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>Pressure across the injectors of each stage as believed by the controller.</summary>
    public ImmutableArray<Pressure> BelievedDifferentialPressures { get; }

    /// <summary>Measured pressure across the injectors of each stage; empty when not measured.</summary>
    public ImmutableArray<Pressure> MeasuredDifferentialPressures { get; private init; }

    /// <summary>Temperature of the fuel at the injectors.</summary>
    public Temperature FuelTemperature { get; }

    /// <summary>Voltage at the injectors.</summary>
    public ElectricPotential AtInjectors { get; private init; }

    /// <summary>Voltage that the controller compensates for.</summary>
    public ElectricPotential AtController { get; }

    /// <summary>The air of each chamber over that of the mean chamber; empty where all get the same.</summary>
    public ImmutableArray<Ratio> ChamberAir { get; private init; }

    /// <summary>The reading of each bank.</summary>
    public ImmutableArray<BankReading> Banks { get; }

    /// <summary>Readings of single chambers; empty where there are none.</summary>
    public ImmutableArray<ChamberReading> Chambers { get; private init; }

    /// <summary>The pressures presumed real: measured, else those believed by the controller.</summary>
    internal ImmutableArray<Pressure> PresumedPressures =>
        MeasuredDifferentialPressures.IsEmpty ? BelievedDifferentialPressures : MeasuredDifferentialPressures;

    /// <summary>The same observation with measured pressures across the injectors.</summary>
    /// <param name="differentialPressures">Pressure across the injectors of each stage; greater than zero. Copied.</param>
    /// <returns>A new observation; an error of pressure is then one of the gauge.</returns>
    /// <exception cref="ArgumentException">The number is not that of the stages.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is not greater than zero.</exception>
    public MixtureObservation WithMeasuredPressures(IEnumerable<Pressure> differentialPressures)
    {
        ImmutableArray<Pressure> measured = InjectorConditions.ByStage(
            differentialPressures,
            nameof(differentialPressures)
        );
        return measured.Length == BelievedDifferentialPressures.Length
            ? new(this) { MeasuredDifferentialPressures = measured }
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be a pressure for each stage, {BelievedDifferentialPressures.Length:exactly} in all; {measured.Length:value} given.",
                nameof(differentialPressures)
            );
    }

    /// <summary>The same observation with another voltage at the injectors than the controller measured.</summary>
    /// <param name="atInjectors">Voltage at the injectors; greater than zero.</param>
    /// <returns>A new observation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
    public MixtureObservation WithVoltageAtInjectors(ElectricPotential atInjectors)
    {
        Guard.Positive(atInjectors, atInjectors.InSi(), part: Name);
        return new(this) { AtInjectors = atInjectors };
    }

    /// <summary>The same observation with unequal air.</summary>
    /// <param name="shares">The relative air of each chamber, on any common scale; greater than zero. Copied.</param>
    /// <returns>A new observation, whose shares have a mean of 100 %.</returns>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is not greater than zero.</exception>
    public MixtureObservation WithChamberAir(IEnumerable<Ratio> shares)
    {
        ArgumentNullException.ThrowIfNull(shares);
        double[] all = [.. shares.Select(s => Guard.Positive(s, s.InSi(), nameof(shares), part: Name))];
        Guard.AtLeast(1, all.Length, "An observation (air by chamber)", nameof(shares), part: Name);
        double mean = all.Average();
        return new(this) { ChamberAir = [.. all.Select(s => SiUnits.Ratio(s / mean))] };
    }

    /// <summary>The same observation with lambda of single chambers.</summary>
    /// <param name="chambers">The readings, at most one for each chamber. Copied.</param>
    /// <returns>A new observation.</returns>
    /// <exception cref="ArgumentException">A chamber occurs twice.</exception>
    public MixtureObservation WithChamberReadings(IEnumerable<ChamberReading> chambers)
    {
        ArgumentNullException.ThrowIfNull(chambers);
        chambers = Lists.NoNulls(chambers);
        ImmutableArray<ChamberReading> all = [.. chambers];
        Guard.DifferentNames(all.Select(c => $"chamber {c.Chamber}"), nameof(chambers), part: Name);
        return new(this) { Chambers = all };
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Banks.Length} banks, {Chambers.Length} chambers");
}
