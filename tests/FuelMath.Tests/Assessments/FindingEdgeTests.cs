using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Findings at their limits and just beside them: severity, whether something could be judged, and which way it is off.</summary>
public sealed class FindingEdgeTests
{
    /// <summary>Warm fuel begins above 37.8 °C, 310.95 K, at which the volatility of gasolines is rated.</summary>
    [Theory]
    [InlineData(310.94, Severity.Note)]
    [InlineData(310.95, Severity.Note)]
    [InlineData(310.96, Severity.Warning)]
    public void VaporNotChecked_AboveTheHotLimit_IsAWarning(double kelvins, Severity expected)
    {
        FuelSystem unknown = Workshop.Four().WithFuel(Volatile(LiquidVaporPressure.Unknown("nobody measured it")));
        OperatingPoint point = Point(kelvins);
        Drive drive = new Drive(
            Duration.FromMinutes(2),
            Mass.FromKilograms(40),
            new TankCooling(Workshop.Celsius(20), Power.FromWatts(20), TemperatureDelta.FromKelvins(10))
        ).WithSoak(Temperature.FromKelvins(kelvins));

        Finding fuel = Assert.Single(unknown.Solve(point).Findings, f => f.Code == FindingCode.VaporNotChecked);
        Finding soak = Assert.Single(
            new SystemAssessment(unknown, [Point(293.15).WithDrive(drive)]).Points[0].Verdict.Findings,
            f => f.Code == FindingCode.VaporNotChecked && f.What.Contains("hot soak", StringComparison.Ordinal)
        );

        Assert.Equal((expected, true), (fuel.Severity, fuel.IsNotKnown));
        Assert.Equal((expected, true), (soak.Severity, soak.IsNotKnown));
    }

    /// <summary>
    /// Data from 30 °C to 60 °C and fuel at 20 °C: the value at 30 °C bounds it from above. Against 0.3 bar a tank at 1 bar keeps
    /// 0.7 bar, which proves the 0.2 bar asked for; against 0.85 bar it keeps 0.15 bar, which proves nothing.
    /// </summary>
    [Theory]
    [InlineData(20, 0.3, null)]
    [InlineData(20, 0.85, FindingCode.VaporNotChecked)]
    [InlineData(30, 0.3, null)]
    [InlineData(30, 0.85, FindingCode.VaporMarginLow)]
    public void Vapor_BelowItsData_IsABound(double celsius, double barsAtThirty, FindingCode? expected)
    {
        FuelSystem system = Workshop.Four().WithFuel(Volatile(Through(barsAtThirty)));
        Finding[] found =
        [
            .. system
                .Solve(Point(273.15 + celsius))
                .Findings.Where(f => f.Code is FindingCode.VaporMarginLow or FindingCode.VaporNotChecked),
        ];

        Assert.Equal(expected is null ? [] : [expected.Value], found.Select(f => f.Code).Distinct());
        Assert.All(found, f => Assert.Equal(expected == FindingCode.VaporNotChecked, f.IsNotKnown));
    }

    /// <summary>
    /// The air over a vented tank lies this far above the vapor pressure of its fuel: with nothing to spare it boils. The margin asked
    /// for is 0.2 bar.
    /// </summary>
    [Theory]
    [InlineData(-2000, Severity.Danger, "boils", "below")]
    [InlineData(0, Severity.Danger, "boils", "above")]
    [InlineData(1, Severity.Warning, "is near boiling", "above")]
    [InlineData(2000, Severity.Warning, "is near boiling", "above")]
    public void VaporMargin_OfATank_BoilsWithNothingToSpare(double spare, Severity expected, string says, string which)
    {
        FuelSystem system = Workshop.Four().WithFuel(Volatile(Through(0.95)));
        Temperature at = Workshop.Celsius(30);
        double vapor = system.Fuel.VaporPressure.At(at).AboveVacuum.Pascals;
        OperatingPoint point = new(
            "test",
            Workshop.Rpm(3000),
            new IntakeAir(
                Workshop.Kilopascals(60),
                new AbsolutePressure(Pressure.FromPascals(vapor + spare)),
                Workshop.Celsius(25)
            ),
            at,
            ElectricPotential.FromVolts(13.8),
            Workshop.Hold(1)
        );

        Finding tank = Assert.Single(
            system.Solve(point).Findings,
            f => f.Code == FindingCode.VaporMarginLow && f.Part == "tank"
        );

        Assert.Equal(expected, tank.Severity);
        Assert.Contains(says, tank.What, StringComparison.Ordinal);
        Assert.Contains(which, tank.Value, StringComparison.Ordinal);
        Close.WithinOf(1e5, 1e-12, spare, ((Pressure)tank.ValueQuantity!).Pascals);
        Close.Within(1e-12, 20_000, ((Pressure)tank.LimitQuantity!).Pascals);
    }

    /// <summary>A controller that was told one reference of a rail that has the other: the finding names both the right way round.</summary>
    [Theory]
    [InlineData(RegulatorReference.Ambient, RailPressure.Reference.Manifold, "is fixed", "follows the manifold")]
    [InlineData(RegulatorReference.Manifold, RailPressure.Reference.Fixed, "follows the manifold", "is fixed")]
    public void RailReference_NotAsTold_NamesBoth(
        RegulatorReference real,
        RailPressure.Reference told,
        string isReally,
        string wasTold
    )
    {
        SystemState state = VerdictCases
            .Told(Workshop.Four(reference: real), told)
            .Solve(VerdictCases.At(Workshop.Hold(1), 2500, 45));

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.RailReferenceNotAsTold);
        Assert.Contains($"'primary' {isReally},", found.What, StringComparison.Ordinal);
        Assert.EndsWith($"was told that it {wasTold}", found.What, StringComparison.Ordinal);
        Assert.Contains($"that the rail {isReally}", found.Action, StringComparison.Ordinal);
    }

    /// <summary>Which temperature the curve of a pump is for is said only where nobody told it.</summary>
    [Fact]
    public void PumpWords_FluidTemperature_IsSaidWhereItIsTaken()
    {
        Pump pump = Workshop.Pump(1);
        string taken = PumpFindings.Words(pump, 790)!;
        string told = PumpFindings.Words(pump.WithFluidTemperature(Workshop.Celsius(20)), 790)!;
        string lighter = PumpFindings.Words(pump, 700)!;

        Assert.Contains("20 °C", taken, StringComparison.Ordinal);
        Assert.DoesNotContain("20 °C", told, StringComparison.Ordinal);
        Assert.Equal(taken.Replace(", taken at 20 °C", "", StringComparison.Ordinal), told);
        Assert.Contains("denser", taken, StringComparison.Ordinal);
        Assert.Contains("lighter", lighter, StringComparison.Ordinal);
        // The lesser flow: the same volume in a denser fuel, the same speed and head in a lighter one.
        Assert.Contains("displacement", taken, StringComparison.Ordinal);
        Assert.DoesNotContain("displacement", lighter, StringComparison.Ordinal);
        Assert.Contains("not known", taken, StringComparison.Ordinal);
        string rotodynamic = PumpFindings.Words(pump.WithPrinciple(Pump.WorkingPrinciple.Rotodynamic), 790)!;
        Assert.EndsWith("as a rotodynamic pump of the same speed and head.", rotodynamic, StringComparison.Ordinal);
        Assert.DoesNotContain("not known", rotodynamic, StringComparison.Ordinal);
        Assert.Null(PumpFindings.Words(pump.WithPrinciple(Pump.WorkingPrinciple.Displacement), 790));
    }

    [Fact]
    public void WithQuantities_NoValue_IsRefused()
    {
        Finding any = Workshop.Four(setBars: 2).Solve(Point(293.15)).Findings[0];

        Assert.Equal("value", Assert.Throws<ArgumentNullException>(() => any.WithQuantities(null!, null)).ParamName);
    }

    private static OperatingPoint Point(double kelvins) =>
        new(
            "test",
            Workshop.Rpm(3000),
            new IntakeAir(Workshop.Kilopascals(60), Workshop.Kilopascals(100), Workshop.Celsius(25)),
            Temperature.FromKelvins(kelvins),
            ElectricPotential.FromVolts(13.8),
            Workshop.Hold(1)
        );

    /// <summary>
    /// With widths given no lambda is asked for, which is said while one stage sprays; with both shut there is no mixture to
    /// speak of.
    /// </summary>
    [Theory]
    [InlineData(2, true)]
    [InlineData(0, false)]
    public void Mixture_OfGivenWidths_IsSaidWhileAStageSprays(double milliseconds, bool isSaid)
    {
        SystemState state = Workshop
            .Four(secondaries: (Workshop.Injector("second", 500), 0.5))
            .Solve(
                VerdictCases.At(
                    FuelCommand.FromPulseWidths([Duration.FromMilliseconds(milliseconds), Duration.Zero]),
                    3000,
                    100
                )
            );

        Assert.Equal(isSaid, state.Findings.Any(f => f is { Code: FindingCode.MixtureNotJudged, IsNotKnown: true }));
    }

    private static Fuel Volatile(LiquidVaporPressure vapor) => Workshop.Gasoline.WithVaporPressure("invented", vapor);

    /// <summary>From 30 °C to 60 °C, where it is twice as much.</summary>
    private static LiquidVaporPressure Through(double barsAtThirty) =>
        LiquidVaporPressure.FromPoints(
            [Workshop.Celsius(30), Workshop.Celsius(60)],
            [new(Pressure.FromBars(barsAtThirty)), new(Pressure.FromBars(2 * barsAtThirty))],
            Workshop.Invented
        );
}
