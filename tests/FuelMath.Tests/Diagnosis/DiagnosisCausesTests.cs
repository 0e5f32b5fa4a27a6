using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Diagnosis;

/// <summary>Causes that need more than one injector or a dead time over pressure; the readings are worked out by hand.</summary>
public sealed class DiagnosisCausesTests
{
    /// <summary>Dead time at a pressure: 1 ms at 3 bar and 0.1 ms more for each bar.</summary>
    private static double Dead(double bars) => 1 + (0.1 * (bars - 3));

    /// <summary>
    /// A rail at 380 kPa that was told 300, with dead times over pressure: the pressure is found, and no injector is blamed.
    /// Delivered: sqrt(3.8/3) (w + 1 - 1.08) / w.
    /// </summary>
    [Fact]
    public void Causes_RailAboveWhatWasTold_BlamesNoInjector()
    {
        FittedInjectors set = OverPressure(2, 3, 4);
        var diagnosis = new MixtureDiagnosis(
            set,
            Place.Five.Select(p =>
                Observed.At(
                    p,
                    3,
                    Trade.Milliseconds(p.Milliseconds + 1),
                    p.Milliseconds / ((p.Milliseconds + 1 - Dead(3.8)) * Math.Sqrt(3.8 / 3)),
                    0.005
                )
            )
        );
        MixtureDiagnosis.RankedCause first = diagnosis.Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.RailPressure, first.Cause);
        Assert.True(first.Fits);
        Close.Within(1e-9, 0.8, Observed.Bar(first.Estimates[0]));
        Assert.Empty(first.Remarks);
        Assert.False(diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlow).Fits);
        Assert.False(diagnosis.Of(MixtureDiagnosis.Cause.DeadTime).Fits);

        // Only other injectors, in flow and in dead time at once, would look like it; a gauge tells.
        MixtureDiagnosis.InseparableCause other = Assert.Single(first.CannotBeToldFrom);
        Assert.Equal(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime, other.Cause);
        Assert.Equal(MixtureDiagnosis.DecidingTestKind.Gauge, other.DecidingTests[0].Kind);
    }

    /// <summary>
    /// A table that ends at 3.4 bar and refuses: the fit goes on with its end held, and the estimate of 3.8 bar says so.
    /// </summary>
    [Fact]
    public void Remarks_EstimateBeyondTheTable_SayWhichTable()
    {
        FittedInjectors set = OverPressure(2, 3, 3.4);
        MixtureDiagnosis.RankedCause pressure = new MixtureDiagnosis(
            set,
            Place.Five.Select(p =>
                Observed.At(
                    p,
                    3,
                    Trade.Milliseconds(p.Milliseconds + 1),
                    p.Milliseconds / ((p.Milliseconds + 1 - Dead(3.4)) * Math.Sqrt(3.8 / 3)),
                    0.005
                )
            )
        ).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.RailPressure, pressure.Cause);
        Close.Within(1e-9, 0.8, Observed.Bar(pressure.Estimates[0]));
        Assert.Equal(
            "The dead-time table of 'over pressure' reaches from 2.00 bar to 3.40 bar and was held at its end for 3.80 bar.",
            Assert.Single(pressure.Remarks)
        );
    }

    /// <summary>
    /// A corner: the truth lies on a pressure of the table, and scatter pulls to either side of it. Every fit settles.
    /// </summary>
    [Fact]
    public void Causes_PressureOnACornerOfTheTable_Settles()
    {
        FittedInjectors set = OverPressure(2, 3, 3.5, 5);
        for (int seed = 0; seed < 30; seed++)
        {
            var random = new Random(seed);
            MixtureDiagnosis.RankedCause pressure = new MixtureDiagnosis(
                set,
                Place.Five.Select(p =>
                    Observed.At(
                        p,
                        3,
                        Trade.Milliseconds(p.Milliseconds + 1),
                        p.Milliseconds
                            / ((p.Milliseconds + 1 - Dead(3.5)) * Math.Sqrt(3.5 / 3))
                            * (0.99 + (0.02 * random.NextDouble())),
                        0.01
                    )
                )
            ).Of(MixtureDiagnosis.Cause.RailPressure);

            Assert.InRange(Observed.Bar(pressure.Estimates[0]), 0.3, 0.7);
        }
    }

    /// <summary>One of four injectors flows 70 %: its own lambda is 1/0.7, the others' are 1.</summary>
    [Fact]
    public void Causes_WeakInjector_IsFoundByReadingsOfEachChamber()
    {
        MixtureDiagnosis.RankedCause first = Ill(1, [1, 1, 0.7, 1], true).Causes[0];

        Assert.Equal((MixtureDiagnosis.Cause.OneInjectorFlow, 3), (first.Cause, first.Chamber));
        Close.Within(1e-9, 0.7, Observed.Share(first.Estimates[0]));
        Assert.Empty(first.CannotBeToldFrom);
    }

    /// <summary>
    /// One sensor behind all four sees 4/(3 + 0.7) everywhere: a flow error of all, or any one of them. A reading of chamber 1
    /// tells: 1/(3.7/4) if all are weak, 1/0.7 if it is the one.
    /// </summary>
    [Fact]
    public void Causes_WeakInjectorBehindOneSensor_IsNotToldFromFlow()
    {
        MixtureDiagnosis diagnosis = Ill(1, [1, 1, 0.7, 1], false);
        MixtureDiagnosis.RankedCause weak = diagnosis.Of(MixtureDiagnosis.Cause.OneInjectorFlow, 3);
        MixtureDiagnosis.InseparableCause flow = weak.CannotBeToldFrom.Single(c =>
            c.Cause == MixtureDiagnosis.Cause.InjectorFlow
        );
        MixtureDiagnosis.DecidingTest read = flow.DecidingTests.Single(t =>
            t.Kind == MixtureDiagnosis.DecidingTestKind.ChamberReading
        );

        Close.Within(1e-9, 0.7, Observed.Share(weak.Estimates[0]));
        Close.Within(1e-9, 3.7 / 4, Observed.Share(diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlow).Estimates[0]));
        Assert.Equal("exactly the same shape in these readings", flow.Why);
        Assert.Equal(
            [1, 2, 4],
            weak.CannotBeToldFrom.Where(c => c.Cause == MixtureDiagnosis.Cause.OneInjectorFlow)
                .Select(c => c.Chamber!.Value)
                .Order()
        );
        Assert.Equal(3, read.Chamber);
        Close.Within(1e-8, 1 / 0.7, read.FactorIfThis!.Value.DecimalFractions);
        Close.Within(1e-8, 4 / 3.7, read.FactorIfOther!.Value.DecimalFractions);
    }

    /// <summary>With a sensor for each pair, a weak one of the second pair is no error of all, and its neighbor is as suspect.</summary>
    [Fact]
    public void Causes_WeakInjectorOfOneBank_IsNoErrorOfAll()
    {
        MixtureDiagnosis diagnosis = Ill(2, [1, 1, 0.7, 1], false);
        MixtureDiagnosis.RankedCause first = diagnosis.Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.OneInjectorFlow, first.Cause);
        Assert.Equal(
            [4],
            first
                .CannotBeToldFrom.Where(c => c.Cause == MixtureDiagnosis.Cause.OneInjectorFlow)
                .Select(c => c.Chamber!.Value)
        );
        Assert.DoesNotContain(first.CannotBeToldFrom, c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow);
        Assert.False(diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlow).Fits);
    }

    /// <summary>
    /// A leak of 0.02 g/s into chamber 2 past a shut injector, at the same 3 bar everywhere: more in each cycle the longer the
    /// cycle lasts.
    /// </summary>
    [Fact]
    public void Causes_LeakingInjector_IsFoundByReadingsOfEachChamber()
    {
        double flow = 500 / 6e7 * Trade.Density.KilogramsPerCubicMeter;
        MixtureDiagnosis.RankedCause first = Chambers(
            1,
            true,
            (p, c) => (flow * p.Milliseconds / 1e3) + (c == 1 ? 2e-5 * 120 / p.Rpm : 0)
        ).Causes[0];

        Assert.Equal((MixtureDiagnosis.Cause.OneInjectorLeak, 2), (first.Cause, first.Chamber));
        Close.Within(1e-9, 0.02, ((MassFlow)first.Estimates[0].Value).GramsPerSecond);
    }

    /// <summary>A chamber that runs lean is no leak: the estimate stays at none, and says so.</summary>
    [Fact]
    public void Remarks_LeakOfALeanChamber_IsAtTheEndOfWhatIsPossible()
    {
        MixtureDiagnosis.RankedCause leak = Ill(1, [1, 0.8, 1, 1], true).Of(MixtureDiagnosis.Cause.OneInjectorLeak, 2);

        Assert.Equal(0, ((MassFlow)leak.Estimates[0].Value).GramsPerSecond);
        Assert.StartsWith("The estimate is at the end", Assert.Single(leak.Remarks), StringComparison.Ordinal);
    }

    /// <summary>An alcohol in the tank and a lighter fuel are a flow error to the engine; a sample of the fuel tells.</summary>
    [Theory]
    [InlineData(MixtureDiagnosis.Cause.FuelDensity)]
    [InlineData(MixtureDiagnosis.Cause.StoichiometricRatio)]
    [InlineData(MixtureDiagnosis.Cause.AirModel)]
    public void CannotBeToldFrom_FuelAndAir_AreExactlyFlow(MixtureDiagnosis.Cause cause)
    {
        // Lambda 1.1 everywhere: air 1.1, stoichiometric ratio 1/1.1, density 1/1.21.
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of(air: _ => 1.1));
        double expected = cause switch
        {
            MixtureDiagnosis.Cause.FuelDensity => 1 / 1.21,
            MixtureDiagnosis.Cause.StoichiometricRatio => 1 / 1.1,
            _ => 1.1,
        };
        MixtureDiagnosis.InseparableCause flow = diagnosis
            .Of(cause)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow);

        Close.Within(1e-9, expected, Observed.Share(diagnosis.Of(cause).Estimates[0]));
        Assert.Equal("exactly the same shape in these readings", flow.Why);
        Assert.Equal(
            cause != MixtureDiagnosis.Cause.AirModel,
            flow.DecidingTests.Any(t => t.Kind == MixtureDiagnosis.DecidingTestKind.FuelSample)
        );
    }

    /// <summary>Nothing wrong, or too little to see: what could hide is named, with its size.</summary>
    [Fact]
    public void CannotBeToldFrom_NoError_NamesWhatCouldHide()
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(Observed.Set, Observed.Of(flow: 0.998)).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.NoError, first.Cause);
        Assert.Contains(first.CannotBeToldFrom, c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow);
    }

    /// <summary>Separation s needs (4/s)^2 repeats: 0.2 % of flow in five readings of 0.5 % is 0.89 of a standard deviation.</summary>
    [Fact]
    public void DecidingTests_TooLittleToSee_SayHowManyReadings()
    {
        MixtureDiagnosis.DecidingTest more = new MixtureDiagnosis(Observed.Set, Observed.Of(flow: 0.998))
            .Of(MixtureDiagnosis.Cause.InjectorFlow)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.NoError)
            .DecidingTests.Single(t => t.Kind == MixtureDiagnosis.DecidingTestKind.MoreReadings);

        // ln(0.998)/0.005 x sqrt(5) = 0.8953; (4/0.8953)^2 = 19.96.
        Assert.Contains("20 times", more.What, StringComparison.Ordinal);
    }

    private static MixtureDiagnosis Ill(int banks, double[] flows, bool readsChambers)
    {
        double flow = 500 / 6e7 * Trade.Density.KilogramsPerCubicMeter;
        return Chambers(banks, readsChambers, (p, c) => flow * flows[c] * p.Milliseconds / 1e3);
    }

    /// <summary>Four chambers, told alike, each with a fuel of its own; widths of 1 ms dead time and what the place says.</summary>
    private static MixtureDiagnosis Chambers(int banks, bool readsChambers, Func<Place, int, double> fuel)
    {
        Injector told = Trade.Injector(500);
        var set = new FittedInjectors(
            Trade.Fluid,
            [new FittedInjectors.Stage("primary", Trade.Belief(told), 1, Enumerable.Repeat(told, 4))],
            [],
            [1, 1, banks, banks],
            MixtureLimits.CommonPractice
        );
        double flow = 500 / 6e7 * Trade.Density.KilogramsPerCubicMeter;
        return new(
            set,
            Place.Five.Select(p =>
            {
                double meant = flow * p.Milliseconds / 1e3;
                double Lambda(params int[] of) => of.Length * meant / of.Sum(c => fuel(p, c));
                MixtureObservation.BankReading Bank(int bank) =>
                    readsChambers
                        ? MixtureObservation.BankReading.FromPulseWidths(
                            bank,
                            [Trade.Milliseconds(p.Milliseconds + 1)],
                            Trade.Share(1)
                        )
                        : new(
                            bank,
                            [Trade.Milliseconds(p.Milliseconds + 1)],
                            Trade.Share(1),
                            Trade.Lambda(
                                banks == 1 ? Lambda(0, 1, 2, 3)
                                : bank == 1 ? Lambda(0, 1)
                                : Lambda(2, 3)
                            ),
                            Trade.Share(0.005)
                        );
                MixtureObservation seen = new(
                    p.Name,
                    Duration.FromSeconds(120 / p.Rpm),
                    Trade.Lambda(1),
                    new(Pressure.FromBars(p.ManifoldBar)),
                    new(Pressure.FromBars(1)),
                    new InjectorConditions([Pressure.FromBars(3)], Trade.Warm, ElectricPotential.FromVolts(14)),
                    Enumerable.Range(1, banks).Select(Bank)
                );
                return readsChambers
                    ? seen.WithChamberReadings(
                        Enumerable
                            .Range(0, 4)
                            .Select(c => new MixtureObservation.ChamberReading(
                                c + 1,
                                Trade.Lambda(Lambda(c)),
                                Trade.Share(0.005)
                            ))
                    )
                    : seen;
            })
        );
    }

    /// <summary>One injector with the dead time above at these pressures, which refuses beyond them.</summary>
    private static FittedInjectors OverPressure(params double[] bars)
    {
        var values = new Duration[2, bars.Length];
        for (int j = 0; j < bars.Length; j++)
        {
            values[0, j] = values[1, j] = Trade.Milliseconds(Dead(bars[j]));
        }

        Injector told = Trade
            .Injector(500)
            .WithDeadTime(
                "over pressure",
                new DeadTimeTable(
                    [ElectricPotential.FromVolts(6), ElectricPotential.FromVolts(16)],
                    bars.Select(b => Pressure.FromBars(b)),
                    values,
                    OutsideRange.Refuse,
                    Trade.Invented
                )
            );
        return Trade.Fitted(told, told);
    }
}
