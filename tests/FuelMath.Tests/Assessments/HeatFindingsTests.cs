using FuelMath.Tests.Documents;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Tank warming and hot soak as findings, where a drive is given.</summary>
public sealed class HeatFindingsTests
{
    private static readonly FuelSystem Rig = Workshop.Four();

    private static readonly OperatingPoint Cruise = Workshop.Point(2500, 50, Workshop.Hold(1), fuelCelsius: 35);

    private static Drive Of(double minutes, double kilograms, double air = 35, double watts = 20) =>
        new(
            Duration.FromMinutes(minutes),
            Mass.FromKilograms(kilograms),
            new TankCooling(Workshop.Celsius(air), Power.FromWatts(watts), TemperatureDelta.FromKelvins(10))
        );

    private static Verdict VerdictOf(Drive drive) =>
        new SystemAssessment(Rig, [Cruise.WithDrive(drive)]).Points[0].Verdict;

    [Fact]
    public void Assess_NoDrive_LooksAtNone() =>
        Assert.DoesNotContain(
            new SystemAssessment(Rig, [Cruise]).Points[0].Verdict.Findings,
            f => f.Code is FindingCode.TankWarmingBoils or FindingCode.TankEmpties or FindingCode.HotSoakBoils
        );

    [Fact]
    public void Assess_MuchFuelForAShortTime_FindsNothing() =>
        Assert.DoesNotContain(
            VerdictOf(Of(2, 40)).Findings,
            f => f.Code is FindingCode.TankWarmingBoils or FindingCode.TankEmpties
        );

    /// <summary>
    /// The warmest by the heat balance of a full loss-less tank, an upper bound: electric power x time over mass x heat capacity of about
    /// 2.1 kJ/(kg K) (value from memory). Gasoline of 60 kPa Reid boils at about 54 °C under one bar: a tank that loses next to nothing comes there.
    /// </summary>
    [Fact]
    public void Assess_LittleFuelForLong_BoilsInTheTank()
    {
        SystemState state = Rig.Solve(Cruise);
        double burned = state.Stages[0].MeanFlow.KilogramsPerSecond;
        double watts = state.Pumps.Sum(p => p.Voltage.Volts * p.Current.Amperes);
        double kilograms = (burned * 3600) + 2;
        Finding boils = Assert.Single(
            VerdictOf(Of(60, kilograms, watts: 1)).Findings,
            f => f.Code == FindingCode.TankWarmingBoils
        );

        // Even of the greatest mass the rise is more than what takes it to boil.
        Assert.InRange(watts * 3600 / (kilograms * 2100), 54 - 35, double.MaxValue);
        Assert.Equal(Severity.Danger, boils.Severity);
        Assert.True(((Pressure)boils.ValueQuantity!).Pascals < 0);
    }

    [Fact]
    public void Assess_DriveLongerThanTheFuel_SaysWhenItIsEmpty()
    {
        double burned = Rig.Solve(Cruise).Stages[0].MeanFlow.KilogramsPerSecond;
        Finding empty = Assert.Single(
            VerdictOf(Of(60, burned * 1800)).Findings,
            f => f.Code == FindingCode.TankEmpties
        );

        Assert.Equal(1800, ((Duration)empty.ValueQuantity!).Seconds, 1e-6);
    }

    /// <summary>At 3 bar and more above ambient gasoline of 60 kPa Reid stays liquid at 85 °C, and boils there under one bar.</summary>
    [Theory]
    [InlineData(40, false)]
    [InlineData(85, true)]
    public void Assess_HotSoak_BoilsOncePressureHasLeakedAway(double celsius, bool boils)
    {
        Finding[] soak =
        [
            .. VerdictOf(Of(2, 40).WithSoak(Workshop.Celsius(celsius)))
                .Findings.Where(f => f.Code == FindingCode.HotSoakBoils),
        ];

        Assert.Equal(boils ? [Severity.Note] : [], soak.Select(f => f.Severity));
    }

    /// <summary>The mildest soak that boils: the vapor pressure is ambient by more digits than are usually shown, which tell them apart.</summary>
    [Fact]
    public void Assess_HotSoakThatJustBoils_ShowsBothPressuresApart()
    {
        (double cool, double hot) = (40, 85);
        while (hot - cool > 1e-4)
        {
            double middle = (cool + hot) / 2;
            (cool, hot) = SoakAt(middle) is null ? (middle, hot) : (cool, middle);
        }

        Finding just = SoakAt(hot)!;

        Assert.InRange(((Pressure)just.ValueQuantity!).Pascals, 100e3, 100.01e3);
        Assert.StartsWith("vapor pressure 1.0000", just.Value, StringComparison.Ordinal);
        Assert.Matches("^ambient 1\\.0+ bar absolute$", just.Limit);
        Assert.NotEqual(Bars(just.Value), Bars(just.Limit));

        static Finding? SoakAt(double celsius) =>
            VerdictOf(Of(2, 40).WithSoak(Workshop.Celsius(celsius)))
                .Findings.SingleOrDefault(f => f.Code == FindingCode.HotSoakBoils);

        static string Bars(string words) => words.Split(' ').First(w => w.StartsWith("1.", StringComparison.Ordinal));
    }

    [Fact]
    public void Assess_HotSoakAboveTheData_IsNotKnown()
    {
        Verdict verdict = VerdictOf(Of(2, 40).WithSoak(Workshop.Celsius(160)));

        Assert.Contains(verdict.NotJudged, f => f.Code == FindingCode.VaporNotChecked);
        Assert.Equal(
            Verdict.Outcome.NotKnown,
            Verdict.KindOf(verdict.NotJudged.First(f => f.Code == FindingCode.VaporNotChecked))
        );
    }

    [Fact]
    public void Document_HoldsADrive()
    {
        OperatingPoint point = Cruise.WithDrive(Of(30, 20).WithSoak(Workshop.Celsius(85)));
        string text = OperatingListDocument.Write([point]);
        OperatingPoint read = OperatingListDocument.Read(text).Single();

        Assert.Equal(text, OperatingListDocument.Write([read]));
        Assert.Equal(30, read.Drive!.Time.Minutes, 1e-9);
        Assert.Equal(85, read.Drive.SoakTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(2, (double)read.Drive.Cooling.LossAtExcess.Watts / read.Drive.Cooling.Excess.Kelvins, 1e-9);
        Assert.Same(
            read.Drive,
            read.WithCommand(Workshop.Open(1)).At(Workshop.Rpm(3000), Workshop.Kilopascals(60)).Drive
        );
        Assert.Throws<DocumentException>(() =>
            OperatingListDocument.Read(
                text.Replace("\"20 kg\"", "\"-20 kg\"", StringComparison.Ordinal)
                    .Replace("20000 g", "-20000 g", StringComparison.Ordinal)
            )
        );
    }

    [Fact]
    public void Drive_OfNoTime_IsRefused() =>
        Assert.Equal("time", Assert.Throws<ArgumentOutOfRangeException>(() => Of(0, 20)).ParamName);
}
