using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A pump whose curve was measured in a fluid of another density.</summary>
public sealed class PumpFluidTests
{
    private static readonly OperatingPoint Held = Workshop.Point(3000, 100, Workshop.Hold(0.9));

    /// <summary>Denser than pump gasoline by 6 to 7 %.</summary>
    private static readonly Fuel Ethanol = StandardFuels.Ethanol;

    private static readonly double Ratio =
        Ethanol.DensityAt(Workshop.Celsius(20)).InSi() / Workshop.Gasoline.DensityAt(Workshop.Celsius(20)).InSi();

    /// <summary>Rotodynamic: the head at a flow stays, so that the rise goes with the density. Source: [White-2003] section 11.3.</summary>
    [Fact]
    public void CurveAt_Rotodynamic_RaisesByTheDensity()
    {
        Pump pump = Workshop.Pump(1).WithPrinciple(Pump.WorkingPrinciple.Rotodynamic);
        var volts = ElectricPotential.FromVolts(12);

        PumpCurve own = pump.CurveAt(volts);
        PumpCurve other = pump.CurveAt(volts, Ethanol.DensityAt(Workshop.Celsius(20)));

        Assert.InRange(Ratio, 1.04, 1.1);
        var flow = VolumeFlow.FromLitersPerHour(150);
        Close.Within(1e-9, own.RiseAt(flow).Pascals * Ratio, other.RiseAt(flow).Pascals);
        Assert.NotNull(other.EstimateBasis);
    }

    [Theory]
    [InlineData(Pump.WorkingPrinciple.Displacement)]
    [InlineData(Pump.WorkingPrinciple.NotKnown)]
    public void CurveAt_DisplacementOrNotKnownInADenserFluid_StaysAsItIs(Pump.WorkingPrinciple principle)
    {
        Pump pump = Workshop.Pump(1).WithPrinciple(principle);
        var volts = ElectricPotential.FromVolts(12);

        Assert.Same(pump.CurveAt(volts), pump.CurveAt(volts, Ethanol.DensityAt(Workshop.Celsius(20))));
    }

    [Fact]
    public void CurveAt_NotKnownInALighterFluid_IsTheRotodynamicOne()
    {
        var volts = ElectricPotential.FromVolts(12);
        Density light = Workshop.Gasoline.DensityAt(Workshop.Celsius(20)) * 0.9;

        Pressure notKnown = Workshop.Pump(1).CurveAt(volts, light).GreatestPressureRise;

        Close.Within(1e-9, 0.9 * Workshop.Pump(1).CurveAt(volts).GreatestPressureRise.Pascals, notKnown.Pascals);
    }

    /// <summary>
    /// Solved by the solver's own reading, and by a pump whose curves were carried over before: the same state.
    /// </summary>
    [Theory]
    [InlineData(1.06)]
    [InlineData(0.98)]
    public void Solve_Rotodynamic_IsWhatCurvesCarriedOverBeforeGive(double ratio)
    {
        Fuel fuel = Workshop.Gasoline;
        double testTemperature = TemperatureOf(fuel, fuel.DensityAt(Workshop.Celsius(20)).InSi() / ratio);
        Pump measured = Workshop.Pump(1).WithPrinciple(Pump.WorkingPrinciple.Rotodynamic);
        Pump told = measured.WithFluidTemperature(Temperature.FromKelvins(testTemperature));
        Pump carried = new Pump(
            "pump",
            measured.Curves.Select(c => PumpEstimate.InFluid(c, UnitsNet.Ratio.FromDecimalFractions(ratio))),
            fuel,
            Workshop.Invented
        ).WithPrinciple(Pump.WorkingPrinciple.Displacement);

        SystemState expected = Rig(carried).Solve(Held);
        SystemState state = Rig(told).Solve(Held);

        Close.Within(1e-5, expected.Pumps[0].Flow.LitersPerHour, state.Pumps[0].Flow.LitersPerHour);
        Close.Within(1e-5, expected.Pumps[0].Current.Amperes, state.Pumps[0].Current.Amperes);
        Close.Within(1e-5, expected.Pumps[0].PressureRise.Bars, state.Pumps[0].PressureRise.Bars);
        Assert.Null(state.Pumps[0].GreatestFlow);
    }

    /// <summary>The lesser flow is reckoned with, the greater stands beside it, and a finding says so.</summary>
    [Fact]
    public void Solve_NotKnown_LiesBetweenTheTwoPrinciples()
    {
        FuelSystem system = Workshop.Four().WithFuel(Ethanol);
        SystemState.PumpResult notKnown = system.Solve(Held).Pumps[0];
        SystemState.PumpResult displacement = Of(system, Pump.WorkingPrinciple.Displacement).Solve(Held).Pumps[0];
        SystemState.PumpResult rotodynamic = Of(system, Pump.WorkingPrinciple.Rotodynamic).Solve(Held).Pumps[0];

        Close.Within(1e-9, displacement.Flow.LitersPerHour, notKnown.Flow.LitersPerHour);
        Assert.True(rotodynamic.Flow.LitersPerHour > 1.005 * displacement.Flow.LitersPerHour);
        Assert.InRange(
            notKnown.GreatestFlow!.Value.LitersPerHour,
            rotodynamic.Flow.LitersPerHour,
            1.02 * rotodynamic.Flow.LitersPerHour
        );
        Assert.Contains(
            system.Solve(Held).Findings,
            f => f.Severity == Severity.Note && f.Code == FindingCode.PumpPrincipleNotKnown
        );
        Assert.DoesNotContain(
            Of(system, Pump.WorkingPrinciple.Displacement).Solve(Held).Findings,
            f => f.Code == FindingCode.PumpPrincipleNotKnown
        );
    }

    [Fact]
    public void Solve_FluidOfTheTest_SaysNothing()
    {
        SystemState state = Workshop.Four().Solve(Held);

        Assert.DoesNotContain(state.Evidence.Estimates, e => e.Contains("principle", StringComparison.Ordinal));
        Close.Within(1e-9, state.Pumps[0].Flow.LitersPerHour, state.Pumps[0].GreatestFlow!.Value.LitersPerHour);
    }

    [Fact]
    public void Document_PrincipleAndTemperature_ComeBackAsTheyWere()
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System("training-stand"));
        Pump pump = PumpOf(system)
            .WithPrinciple(Pump.WorkingPrinciple.Rotodynamic)
            .WithFluidTemperature(Workshop.Celsius(25));
        FuelSystem told = system.WithNetwork(
            new Network(
                system.Network.Nodes,
                system.Network.Lines.Select(l => l.Part is Pump ? new Line(l.Name, l.From, l.To, pump) : l)
            )
        );

        Pump read = PumpOf(SystemDocument.Read(SystemDocument.Write(told)));

        Assert.Equal(Pump.WorkingPrinciple.Rotodynamic, read.Principle);
        Assert.Equal(25, read.FluidTemperature!.Value.DegreesCelsius, 1e-9);
    }

    [Fact]
    public void With_UnknownChoiceOrTemperature_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "principle",
            () => Workshop.Pump(1).WithPrinciple((Pump.WorkingPrinciple)7)
        );
        Assert.Throws<OutsideTableException>(() => Workshop.Pump(1).WithFluidTemperature(Workshop.Celsius(400)));
        Assert.Throws<ArgumentOutOfRangeException>(
            "densityRatio",
            () => PumpEstimate.InFluid(Workshop.Pump(1).Curves[0], UnitsNet.Ratio.FromDecimalFractions(0.4))
        );
    }

    [Fact]
    public void WithDriveAndWorn_KeepThePrinciple()
    {
        Pump pump = Workshop
            .Pump(1)
            .WithPrinciple(Pump.WorkingPrinciple.Displacement)
            .WithFluidTemperature(Workshop.Celsius(25));

        Pump driven = pump.WithDrive("driven", PumpDrive.ByDuty(UnitsNet.Ratio.FromPercent(80)));

        Assert.Equal((pump.Principle, pump.FluidTemperature), (driven.Principle, driven.FluidTemperature));
    }

    private static Pump PumpOf(FuelSystem system) => system.Network.Lines.Select(l => l.Part).OfType<Pump>().Single();

    private static FuelSystem Of(FuelSystem system, Pump.WorkingPrinciple principle) =>
        system.WithNetwork(
            Workshop.NetworkOf(
                Workshop.Pump(1).WithPrinciple(principle),
                Workshop.Regulator(RegulatorReference.Manifold, 3),
                8
            )
        );

    private static FuelSystem Rig(Pump pump) =>
        Workshop.Four().WithNetwork(Workshop.NetworkOf(pump, Workshop.Regulator(RegulatorReference.Manifold, 3), 8));

    /// <summary>Where a fuel has a density, K, by halving.</summary>
    private static double TemperatureOf(Fuel fuel, double density)
    {
        double low = fuel.Density.LowestTemperature!.Value.Kelvins;
        double high = fuel.Density.HighestTemperature!.Value.Kelvins;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) =
                fuel.DensityAt(Temperature.FromKelvins(middle)).InSi() > density ? (middle, high) : (low, middle);
        }

        return low;
    }
}
