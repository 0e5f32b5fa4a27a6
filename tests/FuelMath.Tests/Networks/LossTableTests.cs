using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>Measured losses: at their readings, carried to another fluid, and refused beyond.</summary>
public sealed class LossTableTests
{
    private static readonly DataSource Source = new("Workshop-class", "invented");
    private static readonly Density Heavy = Density.FromKilogramsPerCubicMeter(790);
    private static readonly DynamicViscosity Thick = DynamicViscosity.FromPascalSeconds(1.2e-3);
    private static readonly Density Light = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromPascalSeconds(4.5e-4);

    private static LossTable Cooler { get; } =
        new("cooler", [Reading(60, 4), Reading(120, 14.5), Reading(240, 52)], Light, Thin, Source);

    [Fact]
    public void Solve_AtAReading_LosesWhatWasRead() =>
        Assert.All(
            Cooler.Readings,
            r =>
            {
                NetworkState state = Through(Cooler, r.Flow).Solve(new NetworkConditions(Light, Thin));

                Close.WithinOf(100, 1e-9, 100 - r.PressureLoss.Kilopascals, state.KilopascalsAt("end"));
                Close.Within(1e-12, r.PressureLoss.Pascals, Cooler.LossAt(r.Flow, Light, Thin).Pascals);
                Close.Within(1e-12, -r.PressureLoss.Pascals, Cooler.LossAt(-r.Flow, Light, Thin).Pascals);
            }
        );

    [Fact]
    public void LossAt_NoFlow_IsNone() => Assert.Equal(0, Cooler.LossAt(VolumeFlow.Zero, Light, Thin).Pascals);

    /// <summary>
    /// The same hose measured in one fluid and asked in another. Three hundred readings over two decades: the curve between
    /// them rounds off the kinks of the passage, where the slope jumps to three times: by an eighth of a step of 1.5 %.
    /// </summary>
    [Fact]
    public void LossAt_AnotherFluid_IsThatOfTheHoseThatWasMeasured()
    {
        var hose = new Hose(
            "hose",
            Length.FromMeters(2),
            Length.FromMillimeters(7),
            Length.FromMicrometers(20),
            Ratio.FromDecimalFractions(2),
            Source
        );
        VolumeFlow[] flows = [.. Enumerable.Range(0, 300).Select(i => Make.LitersPerHour(6 * Math.Pow(10, i / 149.5)))];
        var table = new LossTable(
            "measured hose",
            flows.Select(q => new LossTable.Point(q, hose.LossAt(q, Heavy, Thick))),
            Heavy,
            Thick,
            Source
        );

        // Thin fuel meets the same Reynolds number at 0.4 of the flow.
        Assert.All(
            Enumerable.Range(0, 40),
            i =>
            {
                VolumeFlow flow = Make.LitersPerHour(5 * Math.Pow(40, i / 39.0));
                Close.Within(2e-3, hose.LossAt(flow, Light, Thin).Pascals, table.LossAt(flow, Light, Thin).Pascals);
            }
        );
    }

    [Property]
    public void LossAt_MoreFlow_IsMore(byte first, byte second)
    {
        double less = Math.Min(first, second) / 255.0 * 240;
        double more = Math.Max(first, second) / 255.0 * 240;

        Assert.True(
            Loss(less) < Loss(more) || first == second,
            FormattableString.Invariant($"{less} L/h: {Loss(less)} Pa; {more} L/h: {Loss(more)} Pa")
        );

        static double Loss(double litersPerHour) =>
            Cooler.LossAt(Make.LitersPerHour(litersPerHour), Light, Thin).Pascals;
    }

    [Fact]
    public void Solve_BeyondTheLastReading_IsRefusedWithTheTable()
    {
        OutsideTableException refusal = Assert.Throws<OutsideTableException>(() =>
            Through(Cooler, Make.LitersPerHour(250)).Solve(new NetworkConditions(Light, Thin))
        );

        Assert.Contains("cooler", refusal.Message, StringComparison.Ordinal);
        Close.Within(1e-9, 240, refusal.Maximum);
        Assert.Equal("flow (L/h)", refusal.Axis);
        Assert.Throws<OutsideTableException>(() => Cooler.LossAt(Make.LitersPerHour(-250), Light, Thin));
    }

    /// <summary>At the last reading itself, in a unit that does not round: the edge belongs to the table.</summary>
    [Fact]
    public void Solve_AtTheEdge_IsInside() =>
        Assert.Equal(
            Network.LineCondition.Open,
            Through(Cooler, VolumeFlow.FromLitersPerMinute(4))
                .Solve(new NetworkConditions(Light, Thin))
                .ConditionOf("line")
        );

    [Fact]
    public void Constructor_BadReadings_AreRefused()
    {
        Assert.Throws<ArgumentException>("readings", () => new LossTable("t", [], Light, Thin, Source));
        Assert.Throws<ArgumentException>(
            "readings",
            () => new LossTable("t", [Reading(60, 4), Reading(60, 5)], Light, Thin, Source)
        );
        Assert.Throws<ArgumentException>(
            "readings",
            () => new LossTable("t", [Reading(60, 4), Reading(70, 4)], Light, Thin, Source)
        );
        Assert.Throws<ArgumentException>("readings", () => new LossTable("t", [default], Light, Thin, Source));
        Assert.Throws<ArgumentOutOfRangeException>("flow", () => Reading(0, 4));
        Assert.Throws<ArgumentOutOfRangeException>("pressureLoss", () => Reading(4, -1));
        Assert.Throws<ArgumentOutOfRangeException>(
            "density",
            () => new LossTable("t", [Reading(60, 4)], Density.Zero, Thin, Source)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "viscosity",
            () => new LossTable("t", [Reading(60, 4)], Light, DynamicViscosity.Zero, Source)
        );
    }

    private static LossTable.Point Reading(double litersPerHour, double kilopascals) =>
        new(Make.LitersPerHour(litersPerHour), Make.Kilopascals(kilopascals));

    private static Network Through(LossTable table, VolumeFlow drawn) =>
        new(
            [Make.Fixed("supply", 100), Network.Node.Junction("end", Length.Zero, drawn)],
            [new Line("line", "supply", "end", table)]
        );
}
