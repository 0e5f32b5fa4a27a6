using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The injectors needed for a power, and those of a list that deliver it and still meter idle.</summary>
/// <remarks>
/// A duty limit of 85 % is common practice; makers' data come first.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/TimingExamples.cs" region="Sizing" />
/// </example>
/// <seealso href="../guide/sizing.html">Sizing, timing and idle of injectors</seealso>
public sealed partial class InjectorSizing
{
    /// <summary>Creates the task.</summary>
    /// <param name="layout">The number of injectors, and how often they open.</param>
    /// <param name="supply">Their supply.</param>
    /// <param name="peak">The power needed.</param>
    /// <param name="dutyLimit">The largest duty cycle, dead time included; 10 % to 100 %.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range, or no fuel flows at the peak.</exception>
    public InjectorSizing(InjectorLayout layout, InjectorSupply supply, PeakDemand peak, Ratio dutyLimit)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(supply);
        ArgumentNullException.ThrowIfNull(peak);
        Guard.InRange(dutyLimit, dutyLimit.InSi(), 0.1, 1, SiUnits.Ratio);
        (Layout, Supply, Peak, DutyLimit) = (layout, supply, peak, dutyLimit);
        PeakDifferentialPressure = supply.DifferentialPressureAt(peak.Manifold);
    }

    /// <summary>The number of injectors, and how often they open.</summary>
    public InjectorLayout Layout { get; }

    /// <summary>Their supply.</summary>
    public InjectorSupply Supply { get; }

    /// <summary>The power needed.</summary>
    public PeakDemand Peak { get; }

    /// <summary>The largest duty cycle, dead time included.</summary>
    public Ratio DutyLimit { get; }

    /// <summary>Rail less manifold pressure at the peak.</summary>
    public Pressure PeakDifferentialPressure { get; }

    private double MeanFlow => Peak.FuelFlow.InSi() / Layout.Injectors;

    private double Period => Layout.PeriodAt(Peak.Speed).InSi();

    /// <summary>The static flow of one injector at the conditions of the peak.</summary>
    /// <param name="deadTime">Dead time there; not negative, and shorter than the duty limit allows.</param>
    /// <returns>The mass flow, in kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dead time is outside its range.</exception>
    public MassFlow NeededStaticFlow(Duration deadTime)
    {
        double dead = Guard.NotNegative(deadTime, deadTime.InSi());
        double most = DutyLimit.InSi() * Period;
        return dead < most
            ? SiUnits.MassFlow(
                PulseTiming
                    .NeededStaticFlow(new Real(MeanFlow), new Real(DutyLimit.InSi()), new Real(dead), new Real(Period))
                    .Value
            )
            : throw Guard.OutOfRange(
                deadTime,
                $"shorter than {SiUnits.Duration(most):below}, which the duty limit leaves of the period"
            );
    }

    /// <summary>The rating to look for: the needed static flow as a volume flow at other conditions.</summary>
    /// <param name="deadTime">Dead time at the peak; as for <see cref="NeededStaticFlow"/>.</param>
    /// <param name="ratedDifferentialPressure">Differential pressure of the ratings; greater than zero.</param>
    /// <param name="ratedFluid">Their fluid.</param>
    /// <param name="ratedTemperature">Its temperature.</param>
    /// <returns>The volume flow of one injector, in m³/s.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="ratedFluid"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public VolumeFlow NeededRating(
        Duration deadTime,
        Pressure ratedDifferentialPressure,
        Fuel ratedFluid,
        Temperature ratedTemperature
    )
    {
        ArgumentNullException.ThrowIfNull(ratedFluid);
        Guard.Positive(ratedDifferentialPressure, ratedDifferentialPressure.InSi());
        double density = ratedFluid.DensityAt(ratedTemperature).InSi();
        return SiUnits.VolumeFlow(
            Orifice
                .CarriedMassFlow(
                    new Real(NeededStaticFlow(deadTime).InSi()),
                    new Real(PeakDifferentialPressure.InSi()),
                    new Real(Supply.Density.InSi()),
                    new Real(ratedDifferentialPressure.InSi()),
                    new Real(density)
                )
                .Value / density
        );
    }

    /// <summary>Judges a list of injectors at peak and idle.</summary>
    /// <param name="candidates">The list; one or more. Read once.</param>
    /// <param name="idle">The idle conditions.</param>
    /// <returns>
    /// The accepted ones first, those that meter idle with the largest margin ahead; then the rejected ones with their
    /// reasons, in rising order of static flow.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    public ImmutableArray<Candidate> Choose(IEnumerable<Injector> candidates, IdleDemand idle)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        ArgumentNullException.ThrowIfNull(idle);
        Candidate[] all = [.. Lists.NoNulls(candidates).Select(c => Size(c, idle))];
        Guard.AtLeast(1, all.Length, "A choice (its candidates)", nameof(candidates));
        return
        [
            .. all.Where(s => s.IsAccepted).OrderByDescending(s => s.Idle!.Margin.InSi()),
            .. all.Where(s => !s.IsAccepted).OrderBy(s => s.Injector.Rating.MassFlowSi),
        ];
    }

    /// <summary>
    /// The working of the needed static flow: fuel for the power, share of one injector, static flow.
    /// </summary>
    /// <param name="deadTime">Dead time at the peak; as for <see cref="NeededStaticFlow"/>.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dead time is outside its range.</exception>
    public Working WorkingFor(Duration deadTime)
    {
        _ = NeededStaticFlow(deadTime);
        Traced flow = EngineAir.FuelFlowFromPower(
            Traced.Input(BeliefSymbols.Power, Peak.CrankPower.InSi()),
            Traced.Input(BeliefSymbols.Consumption, Peak.Consumption.InSi())
        );
        return PulseTiming
            .NeededStaticFlow(
                Traced.Step(flow / Layout.Injectors, Symbols.MeanMassFlow, BeliefSymbols.Shares),
                Traced.Input(BeliefSymbols.Duty, DutyLimit.InSi()),
                Traced.Input(Symbols.DeadTime, deadTime.InSi()),
                Traced.Input(Symbols.Period, Period)
            )
            .ToWorking();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Peak}, duty cycle to {DutyLimit}");

    private Candidate Size(Injector injector, IdleDemand idle)
    {
        var timing = new InjectorTiming(injector, Layout, Supply);
        var reasons = ImmutableArray.CreateBuilder<string>();
        (double Duty, double Power)? peak = null;
        IdleControl? control = null;
        try
        {
            peak = PeakOf(injector);
            if (peak.Value.Duty > DutyLimit.InSi() * (1 + Guard.EdgeTolerance))
            {
                reasons.Add(
                    $"duty cycle at the peak is {Show.Percent(peak.Value.Duty)}, limit {Show.Percent(DutyLimit.InSi())}"
                );
            }

            double off = Period * (1 - peak.Value.Duty);
            if (off < injector.ClosingTime.InSi())
            {
                reasons.Add(
                    $"the peak leaves it {Show.Milliseconds(Math.Max(off, 0))} to close, and it needs {Show.Milliseconds(injector.ClosingTime.InSi())}"
                );
            }
        }
        catch (OutsideTableException outside)
        {
            reasons.Add($"its data do not reach the peak: {ExceptionText.Sentence(outside)}");
        }

        try
        {
            control = timing.IdleAt(idle.Lambda, idle.Speed, idle.Manifold, idle.Charge, idle.Timer);
            if (!control.IsControllable)
            {
                reasons.Add(
                    $"idle asks for {Show.Percent(control.Margin.InSi())} of the least mass that it repeats: the engine would idle at lambda {Show.Lambda(control.LambdaAtLeastPulse.Si)}"
                );
            }
        }
        catch (OutsideTableException outside)
        {
            reasons.Add($"its data do not reach idle: {ExceptionText.Sentence(outside)}");
        }

        return new(
            injector,
            peak is { } p ? SiUnits.Ratio(p.Duty) : null,
            peak is { } q ? SiUnits.Power(q.Power) : null,
            control,
            reasons.ToImmutable()
        );
    }

    /// <summary>Duty cycle at the peak, and the power at the limit; fuel is proportional to power.</summary>
    private (double Duty, double Power) PeakOf(Injector injector)
    {
        double flow = injector.Rating.MassFlowSiAt(PeakDifferentialPressure, Supply.Density);
        double dead = injector.DeadTime.SiAt(Supply.AtInjector, PeakDifferentialPressure);
        double duty = PulseTiming.PulseWidth(new Real(MeanFlow * Period), new Real(flow), new Real(dead)).Value;
        double most = Math.Max((DutyLimit.InSi() * Period) - dead, 0) * flow;
        return (
            Pulse.DutyCycle(new Real(duty), new Real(Period)).Value,
            Peak.CrankPower.InSi() * most / (MeanFlow * Period)
        );
    }
}
