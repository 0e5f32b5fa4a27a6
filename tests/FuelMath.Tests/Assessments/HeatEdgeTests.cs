using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>A drive and the hot soak after it, just at each limit and beside it.</summary>
public sealed class HeatEdgeTests
{
    /// <summary>A tank that is empty just as the drive ends is one that runs empty; one that lasts a millionth longer is not.</summary>
    [Theory]
    [InlineData(1, true)]
    [InlineData(0.999999, false)]
    public void TankEmpties_JustAsTheDriveEnds(double share, bool isFound)
    {
        (FuelSystem system, SystemState state) = Solved(Workshop.Gasoline, 20);
        TankCooling cooling = Cooling(20);
        Duration empty = TankWarming
            .Bounds.FromState(system, state, Mass.FromKilograms(1), cooling)
            .Most.TimeToEmpty!.Value;

        Finding[] found =
        [
            .. HeatFindings
                .Of(system, state, new Drive(empty * share, Mass.FromKilograms(1), cooling))
                .Where(f => f.Code == FindingCode.TankEmpties),
        ];

        Assert.Equal(isFound ? [(Severity.Warning, "tank")] : [], found.Select(f => (f.Severity, f.Part)));
        Assert.All(
            found,
            f =>
            {
                Close.Within(1e-12, empty.Seconds, ((Duration)f.ValueQuantity!).Seconds);
                Close.Within(1e-12, empty.Seconds * share, ((Duration)f.LimitQuantity!).Seconds);
            }
        );
    }

    /// <summary>
    /// The tank warms to where its fuel keeps some tenths of a bar to boiling: a margin of just the limit is enough, a greater limit is a
    /// warning; with nothing to spare it boils. Judged is the node of the least pressure, a pump's inlet at the tank.
    /// </summary>
    [Theory]
    [InlineData(0.6, 1, null)]
    [InlineData(0.6, 1.000001, Severity.Warning)]
    [InlineData(1.2, 1, Severity.Danger)]
    public void TankWarming_AtItsLimit(double barsAtThirty, double share, Severity? expected)
    {
        (FuelSystem system, SystemState state) = Solved(Volatile(barsAtThirty), 31);
        Drive drive = new(Duration.FromMinutes(5), Mass.FromKilograms(40), Cooling(31));
        Temperature warm = TankWarming
            .Bounds.FromState(system, state, drive.FuelMass, drive.Cooling)
            .Most.TemperatureAfter(drive.Time);
        double margin = 1e5 - system.Fuel.VaporPressure.At(warm).AboveVacuum.Pascals;
        Assert.True(warm.DegreesCelsius > 31);

        Finding? found = HeatFindings
            .Of(
                system.WithLimits(
                    Limits.CommonPractice.With(
                        new(Limits.Kind.VaporMargin, Pressure.FromPascals(Math.Max(margin, 1) * share), "a test")
                    )
                ),
                state,
                drive
            )
            .SingleOrDefault(f => f.Code == FindingCode.TankWarmingBoils);

        Assert.Equal(expected, found?.Severity);
        if (found is not null)
        {
            Assert.Equal("tank", found.Part);
            Assert.Equal(margin <= 0, found.What.Contains("boils", StringComparison.Ordinal));
            Assert.Contains(margin <= 0 ? "below" : "above", found.Value, StringComparison.Ordinal);
            Close.WithinOf(1e5, 1e-12, margin, ((Pressure)found.ValueQuantity!).Pascals);
            Assert.Equal("Owner", found.LimitSource.Key);
        }
    }

    /// <summary>
    /// At hot soak fuel with just the vapor pressure of the air boils once its pressure has leaked away, with less it does not; with that
    /// of the rail or more it boils under it. The rail of the least pressure is named.
    /// </summary>
    [Theory]
    [InlineData(0.999999, 0, null)]
    [InlineData(1, 0, Severity.Note)]
    [InlineData(0, 0.999999, Severity.Note)]
    [InlineData(0, 1.000001, Severity.Warning)]
    public void HotSoak_AtItsLimits(double ofAir, double ofRail, Severity? expected)
    {
        (_, SystemState usual) = Solved(Volatile(0.3), 20);
        double rail = usual.Injectors.Min(i => usual.PressureAt(i.Seat.Node).AboveAmbient.Bars) + 1;
        double bars = ofRail > 0 ? rail * ofRail : 2;
        Fuel fuel = Volatile(bars);
        Temperature hot = Workshop.Celsius(30);
        double vapor = fuel.VaporPressure.At(hot).AboveVacuum.Pascals;
        (FuelSystem system, SystemState state) = Solved(fuel, 20, ofAir > 0 ? vapor / ofAir : 1e5);

        Finding? found = HeatFindings
            .Of(system, state, new Drive(Duration.FromMinutes(1), Mass.FromKilograms(40), Cooling(20)).WithSoak(hot))
            .SingleOrDefault(f => f.Code == FindingCode.HotSoakBoils);

        Assert.Equal(expected, found?.Severity);
        if (found is not null)
        {
            Assert.Equal("rail end", found.Part);
            Close.Within(1e-12, vapor, ((Pressure)found.ValueQuantity!).Pascals);
            Close.Within(
                1e-9,
                expected == Severity.Warning ? rail * 1e5
                    : ofAir > 0 ? vapor
                    : 1e5,
                ((Pressure)found.LimitQuantity!).Pascals
            );
        }
    }

    /// <summary>Data end at 60 °C: there, and within rounding of it, a soak is judged; beyond it is not known.</summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(0.5e-9, true)]
    [InlineData(1e-7, false)]
    public void HotSoak_AtTheEndOfTheData(double beyond, bool isKnown)
    {
        (FuelSystem system, SystemState state) = Solved(Volatile(0.6), 20);
        Drive drive = new Drive(Duration.FromMinutes(1), Mass.FromKilograms(40), Cooling(20)).WithSoak(
            Temperature.FromKelvins(333.15 * (1 + beyond))
        );

        FindingCode[] codes = [.. HeatFindings.Of(system, state, drive).Select(f => f.Code)];

        Assert.Equal([isKnown ? FindingCode.HotSoakBoils : FindingCode.VaporNotChecked], codes);
    }

    /// <summary>Of a cool tank nobody knows, which is a note; of a hot soak neither, which is a warning and comes first.</summary>
    [Fact]
    public void Findings_OfADrive_TheGravestFirst()
    {
        (FuelSystem system, SystemState state) = Solved(
            Workshop.Gasoline.WithVaporPressure("invented", LiquidVaporPressure.Unknown("nobody measured it")),
            20
        );
        Drive drive = new Drive(Duration.FromMinutes(1), Mass.FromKilograms(40), Cooling(20)).WithSoak(
            Workshop.Celsius(70)
        );

        Assert.Equal([Severity.Warning, Severity.Note], HeatFindings.Of(system, state, drive).Select(f => f.Severity));
    }

    /// <summary>Of a vapor pressure that is estimated with a known error the upper end counts.</summary>
    [Fact]
    public void HotSoak_OfAnEstimate_CountsItsUpperEnd()
    {
        (FuelSystem system, SystemState state) = Solved(Workshop.Gasoline, 20);
        Temperature hot = Workshop.Celsius(85);
        LiquidVaporPressure vapor = system.Fuel.VaporPressure;
        double error = vapor.ErrorAt(hot).DecimalFractions;
        Assert.True(error > 0);

        Finding found = HeatFindings
            .Of(system, state, new Drive(Duration.FromMinutes(1), Mass.FromKilograms(40), Cooling(20)).WithSoak(hot))
            .Single(f => f.Code == FindingCode.HotSoakBoils);

        Close.Within(1e-12, vapor.At(hot).AboveVacuum.Pascals * (1 + error), ((Pressure)found.ValueQuantity!).Pascals);
    }

    /// <summary>
    /// Fuel within rounding of an end of its data is judged as at that end: at the upper end its margin is known, and at the lower one it
    /// is no mere bound.
    /// </summary>
    [Theory]
    [InlineData(333.15 * (1 + 0.5e-9), FindingCode.VaporMarginLow)]
    [InlineData(333.15 * (1 + 1e-7), FindingCode.VaporNotChecked)]
    [InlineData(303.15 * (1 - 0.5e-9), FindingCode.VaporMarginLow)]
    [InlineData(303.15 * (1 - 1e-7), FindingCode.VaporNotChecked)]
    public void Vapor_AtAnEndOfItsData(double kelvins, FindingCode expected)
    {
        (_, SystemState state) = Solved(Volatile(0.85), kelvins - 273.15);

        Assert.Equal(
            [expected],
            state
                .Findings.Select(f => f.Code)
                .Where(c => c is FindingCode.VaporMarginLow or FindingCode.VaporNotChecked)
                .Distinct()
        );
    }

    /// <summary>Of several nodes near boiling each is named, the nearest first.</summary>
    [Fact]
    public void Vapor_OfSeveralNodes_TheNearestFirst()
    {
        (_, SystemState state) = Solved(Volatile(0.97), 30);
        Finding[] low =
        [
            .. state.Findings.Where(f => f is { Code: FindingCode.VaporMarginLow, Severity: Severity.Warning }),
        ];

        Assert.True(low.Length > 1);
        double[] margins = [.. low.Select(f => ((Pressure)f.ValueQuantity!).Pascals)];
        Assert.Equal(margins.Order(), margins);
        Assert.All(
            low,
            f =>
                Close.WithinOf(
                    1e5,
                    1e-9,
                    state.PressureAt(f.Part).AboveAmbient.Pascals + 1e5 - 97_000,
                    ((Pressure)f.ValueQuantity!).Pascals
                )
        );
    }

    /// <summary>A margin of just the limit is enough: the node with it is not named, those with less are.</summary>
    [Fact]
    public void VaporMargin_AtItsLimit_IsNoFinding()
    {
        (FuelSystem system, SystemState state) = Solved(Volatile(0.97), 30);
        Finding[] low = [.. state.Findings.Where(f => f.Code == FindingCode.VaporMarginLow)];
        Pressure limit = (Pressure)low[^1].ValueQuantity!;

        SystemState limited = system
            .WithLimits(Limits.CommonPractice.With(new(Limits.Kind.VaporMargin, limit, "a test")))
            .Solve(state.Point);

        Assert.Equal(
            low[..^1].Select(f => f.Part),
            limited.Findings.Where(f => f.Code == FindingCode.VaporMarginLow).Select(f => f.Part)
        );
    }

    /// <summary>A gasoline that the class of its blend does not allow is said as a note, with what was mixed and what is allowed.</summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(4, true)]
    public void Class_ThatDoesNotAllowItsGasoline_IsSaid(int number, bool isSaid)
    {
        Fuel sold = StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(70), E85Class.FromNumber(number));

        Finding? found = Solved(sold, 30).State.Findings.SingleOrDefault(f => f.Code == FindingCode.FuelOutsideClass);

        Assert.Equal(isSaid, found is not null);
        Assert.Equal(isSaid ? Severity.Note : null, found?.Severity);
        Assert.Equal(isSaid ? sold.Name : null, found?.Part);
    }

    private static (FuelSystem System, SystemState State) Solved(Fuel fuel, double celsius, double ambient = 1e5)
    {
        FuelSystem system = Workshop.Four().WithFuel(fuel);
        return (
            system,
            system.Solve(
                new(
                    "test",
                    Workshop.Rpm(3000),
                    new IntakeAir(
                        Workshop.Kilopascals(60),
                        new AbsolutePressure(Pressure.FromPascals(ambient)),
                        Workshop.Celsius(25)
                    ),
                    Temperature.FromKelvins(celsius + 273.15),
                    ElectricPotential.FromVolts(13.8),
                    Workshop.Hold(1)
                )
            )
        );
    }

    private static TankCooling Cooling(double celsius) =>
        new(Workshop.Celsius(celsius), Power.FromWatts(20), TemperatureDelta.FromKelvins(10));

    /// <summary>Data from 30 °C to 60 °C, where it is twice as much.</summary>
    private static Fuel Volatile(double barsAtThirty) =>
        Workshop.Gasoline.WithVaporPressure(
            "invented",
            LiquidVaporPressure.FromPoints(
                [Workshop.Celsius(30), Workshop.Celsius(60)],
                [new(Pressure.FromBars(barsAtThirty)), new(Pressure.FromBars(2 * barsAtThirty))],
                Workshop.Invented
            )
        );
}
