using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Filters;

[Properties(Arbitrary = [typeof(FilterArbitraries)])]
public sealed class FilterTests
{
    private static readonly DataSource Source = new("Definition", "made for the test");

    // ---- Reference ----------------------------------------------------------------------------------------

    /// <summary>
    /// Data set NoInt1, y over x from 60 to 70. Its best parabola through the origin would bend down, so the best one with
    /// no coefficient below zero is the certified straight line, 2.07438016528926 x. Tolerance: the certified digits.
    /// </summary>
    [Fact]
    [Trait("Source", "NIST-StRD")]
    public void Fit_LineThroughTheOrigin_GivesTheCertifiedSlope()
    {
        Filter filter = Filter.Fit(
            "NoInt1",
            Enumerable
                .Range(0, 11)
                .Select(i => new Filter.Point(Pressure.FromKilopascals(130 + i), VolumeFlow.FromLitersPerHour(60 + i))),
            Density.FromKilogramsPerCubicMeter(LawfulFilter.TestDensity),
            DynamicViscosity.FromPascalSeconds(LawfulFilter.TestViscosity),
            Source
        );

        Close.Within(1e-14, 2.07438016528926 * 65, Loss(filter, 65, 825, 2.1e-3).Kilopascals);
        Close.Within(1e-14, 2.07438016528926 * 35, Loss(filter, 35, 825, 2.1e-3).Kilopascals);

        // The worst point is the first: 124.46 for 130.
        Close.Within(1e-12, (2.07438016528926 * 60 / 130) - 1, filter.WorstMisfit.DecimalFractions);
    }

    /// <summary>Darcy's law alone: the loss goes with viscosity and not with density.</summary>
    [Fact]
    [Trait("Source", "Forchheimer-1901")]
    public void LossAt_LinearFilter_GoesWithViscosity()
    {
        Filter filter = new LawfulFilter(1e10, 0, 360, 3).ToFilter();

        Close.Within(1e-12, 1e10 * 0.5e-3 * 1e-4, Loss(filter, 360, 700, 0.5e-3).Pascals);
    }

    /// <summary>The second term alone: the loss goes with density and not with viscosity.</summary>
    [Fact]
    [Trait("Source", "Forchheimer-1901")]
    public void LossAt_QuadraticFilter_GoesWithDensity()
    {
        Filter filter = new LawfulFilter(0, 1e10, 360, 3).ToFilter();

        Close.Within(1e-12, 1e10 * 700 * 1e-8, Loss(filter, 360, 700, 0.5e-3).Pascals);
    }

    // ---- Properties ---------------------------------------------------------------------------------------

    /// <summary>
    /// Two points are solved exactly. The condition of the two columns is below 30 for two or more evenly spaced points, so
    /// rounding of 1e-16 in the points grows to no more than 1e-13 of the greatest loss.
    /// </summary>
    [Property]
    public void Fit_PointsOnTheLaw_GivesTheLawBackInAnyFluid(LawfulFilter law, Share share)
    {
        Filter filter = law.ToFilter();
        double flow = law.LitersPerHour * share.Value;
        double expected = law.LossAt(flow / 3.6e6, 740, 0.45e-3);

        Close.WithinOf(
            law.LossAt(law.LitersPerHour / 3.6e6, LawfulFilter.TestDensity, LawfulFilter.TestViscosity),
            1e-12,
            expected,
            Loss(filter, flow, 740, 0.45e-3).Pascals
        );
        Assert.InRange(filter.WorstMisfit.DecimalFractions, -1e-11, 1e-11);
    }

    [Property]
    public void LossAt_OtherDirection_TurnsItsSign(LawfulFilter law, Share share)
    {
        Filter filter = law.ToFilter();
        double flow = law.LitersPerHour * share.Value;

        Assert.Equal(-Loss(filter, flow, 740, 0.45e-3).Pascals, Loss(filter, -flow, 740, 0.45e-3).Pascals);
    }

    [Property]
    public void LossAt_MoreFlow_LosesMore(LawfulFilter law, Share first, Share second)
    {
        Filter filter = law.ToFilter();
        double low = Loss(filter, law.LitersPerHour * Math.Min(first.Value, second.Value), 740, 0.45e-3).Pascals;
        double high = Loss(filter, law.LitersPerHour * Math.Max(first.Value, second.Value), 740, 0.45e-3).Pascals;

        Assert.True(low < high || first.Value.Equals(second.Value));
    }

    /// <summary>Flow, loss and fluid in other units: the same filter.</summary>
    [Property]
    public void Fit_OtherUnits_GivesTheSameLoss(LawfulFilter law)
    {
        Filter metric = law.ToFilter();
        Filter other = Filter.Fit(
            "other",
            metric.Points.Select(p => new Filter.Point(
                p.PressureLoss.ToUnit(PressureUnit.PoundForcePerSquareInch),
                p.Flow.ToUnit(VolumeFlowUnit.UsGallonPerHour)
            )),
            metric.TestDensity.ToUnit(DensityUnit.PoundPerCubicFoot),
            metric.TestViscosity.ToUnit(DynamicViscosityUnit.Centipoise),
            Source
        );
        VolumeFlow flow = VolumeFlow.FromUsGallonsPerHour(metric.GreatestFlow.UsGallonsPerHour * 0.7);
        Density density = Density.FromKilogramsPerCubicMeter(740);
        DynamicViscosity viscosity = DynamicViscosity.FromMillipascalSeconds(0.45);

        // A unit round trip moves a point by 2e-12; the fit grows that by its condition, up to 30.
        Close.Within(
            1e-10,
            metric.LossAt(flow, density, viscosity).Pascals,
            other.LossAt(flow, density, viscosity).Pascals
        );
    }

    /// <summary>The law made dimensionless: length times k divides the linear coefficient by k^3, the quadratic by k^4.</summary>
    [Property]
    public void LossAt_ThickerThinnerFluid_ScalesTogether(LawfulFilter law)
    {
        Filter filter = law.ToFilter();
        double half = Loss(filter, law.LitersPerHour / 2, 600, 0.4e-3).Pascals;

        // Twice the flow at half the density and the same viscosity: both terms double.
        Close.Within(1e-12, 2 * half, Loss(filter, law.LitersPerHour, 300, 0.4e-3).Pascals);
    }

    // ---- Fits at the boundary -------------------------------------------------------------------------------

    /// <summary>
    /// Points that rise faster than the square: the free optimum has a linear part below zero. Best quadratic alone, by
    /// hand: q = sum(x2 y) / sum(x4) = (1*1 + 4*8) / (1 + 16) = 33/17.
    /// </summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void Fit_FasterThanSquare_DropsTheLinearPart()
    {
        Filter filter = Filter.Fit(
            "steep",
            [
                new(Pressure.FromKilopascals(1), VolumeFlow.FromLitersPerHour(1)),
                new(Pressure.FromKilopascals(8), VolumeFlow.FromLitersPerHour(2)),
            ],
            Density.FromKilogramsPerCubicMeter(800),
            DynamicViscosity.FromPascalSeconds(1e-3),
            Source
        );

        Close.Within(1e-13, 33.0 / 17, Loss(filter, 1, 800, 1e-3).Kilopascals);
        Close.Within(1e-13, 33.0 / 17, Loss(filter, 1, 800, 5e-3).Kilopascals);
        Close.Within(1e-12, (33.0 / 17) - 1, filter.WorstMisfit.DecimalFractions);
    }

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Theory]
    [InlineData(361)]
    [InlineData(-361)]
    public void LossAt_MoreFlowThanTested_Refuses(double litersPerHour) =>
        Words.OutsideTable(
            $"'generated', -360, 360, {litersPerHour}",
            () => Loss(new LawfulFilter(1e10, 1e10, 360, 3).ToFilter(), litersPerHour, 740, 0.5e-3)
        );

    [Theory]
    [InlineData(0, 0.5e-3, "density", "Must be finite and greater than zero; it was 0 kg/m³.")]
    [InlineData(740, -0.5e-3, "viscosity", "Must be finite and greater than zero; it was -0.5 mPa·s.")]
    public void LossAt_BadFluid_Refuses(double density, double viscosity, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            words,
            () => Loss(new LawfulFilter(1e10, 1e10, 360, 3).ToFilter(), 100, density, viscosity)
        );

    [Fact]
    public void Fit_OnePoint_Refuses() => Words.Refused<ArgumentException>("points", "2, 1", () => Fit((5, 100)));

    [Fact]
    public void Fit_FlowNotRising_NamesTheIndex() =>
        Words.Refused<ArgumentException>("points", "1", () => Fit((5, 100), (6, 100)));

    [Fact]
    public void Fit_LossNotRising_NamesTheIndex() =>
        Words.Refused<ArgumentException>("points", "2", () => Fit((5, 100), (6, 150), (6, 200)));

    [Fact]
    public void Fit_DefaultPoint_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "points",
            "0 m³/s",
            () =>
                Filter.Fit(
                    "f",
                    [default, new(Pressure.FromKilopascals(5), VolumeFlow.FromLitersPerHour(100))],
                    Density.FromKilogramsPerCubicMeter(800),
                    DynamicViscosity.FromPascalSeconds(1e-3),
                    Source
                )
        );

    [Theory]
    [InlineData(0, 1, "pressureLoss", "Must be finite and greater than zero; it was 0 kPa.")]
    [InlineData(5, 0, "flow", "Must be finite and greater than zero; it was 0 L/h.")]
    public void FilterPoint_NotPositive_Refuses(double kilopascals, double litersPerHour, string name, string words) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            words,
            () =>
                _ = new Filter.Point(Pressure.FromKilopascals(kilopascals), VolumeFlow.FromLitersPerHour(litersPerHour))
        );

    [Fact]
    public void Fit_NullOrBlank_SaysWhich()
    {
        Density density = Density.FromKilogramsPerCubicMeter(800);
        DynamicViscosity viscosity = DynamicViscosity.FromPascalSeconds(1e-3);
        Filter.Point[] points =
        [
            new(Pressure.FromKilopascals(5), VolumeFlow.FromLitersPerHour(100)),
            new(Pressure.FromKilopascals(9), VolumeFlow.FromLitersPerHour(150)),
        ];

        Assert.Throws<ArgumentNullException>("points", () => Filter.Fit("f", null!, density, viscosity, Source));
        Assert.Throws<ArgumentNullException>("source", () => Filter.Fit("f", points, density, viscosity, null!));
        Words.Refused<ArgumentException>("name", () => Filter.Fit("", points, density, viscosity, Source));
        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            "0 kg/m³",
            () => Filter.Fit("f", points, default, viscosity, Source)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "viscosity",
            "0 Pa",
            () => Filter.Fit("f", points, density, DynamicViscosity.FromPascalSeconds(0), Source)
        );
    }

    private static Filter Fit(params (double Kilopascals, double LitersPerHour)[] points) =>
        Filter.Fit(
            "trainer",
            points.Select(p => new Filter.Point(
                Pressure.FromKilopascals(p.Kilopascals),
                VolumeFlow.FromLitersPerHour(p.LitersPerHour)
            )),
            Density.FromKilogramsPerCubicMeter(800),
            DynamicViscosity.FromPascalSeconds(1e-3),
            Source
        );

    private static Pressure Loss(Filter filter, double litersPerHour, double density, double viscosity) =>
        filter.LossAt(
            VolumeFlow.FromLitersPerHour(litersPerHour),
            Density.FromKilogramsPerCubicMeter(density),
            DynamicViscosity.FromPascalSeconds(viscosity)
        );
}
