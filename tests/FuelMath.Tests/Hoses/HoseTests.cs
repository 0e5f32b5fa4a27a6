using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Hoses;

[Properties(Arbitrary = [typeof(HoseArbitraries)])]
public sealed class HoseTests
{
    private const double Gravity = 9.80665;
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.5);

    // ---- Reference: numbers that others published -------------------------------------------------------

    /// <summary>
    /// Example 6.7: oil of 900 kg/m3 and 1e-5 m2/s, 0.2 m3/s through 500 m of 200 mm cast iron of 0.26 mm. Printed: 6.4 m/s,
    /// Reynolds number 128 000, head lost 117 m. Tolerances 1 %: the book reads the velocity to two digits and the factor
    /// from a chart.
    /// </summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Hose_OilInCastIron_GivesThePublishedHead()
    {
        Hose pipe = Pipe(500, 0.2, 0.26e-3);
        VolumeFlow flow = VolumeFlow.FromCubicMetersPerSecond(0.2);
        var density = Density.FromKilogramsPerCubicMeter(900);
        var viscosity = DynamicViscosity.FromPascalSeconds(900 * 1e-5);

        Close.Within(0.01, 6.4, pipe.VelocityAt(flow).MetersPerSecond);
        Close.Within(0.01, 128_000, pipe.ReynoldsAt(flow, density, viscosity).DecimalFractions);
        Close.Within(0.01, 117, pipe.LossAt(flow, density, viscosity).Pascals / (900 * Gravity));
    }

    /// <summary>
    /// Example 6.6: water at 6 ft/s through 200 ft of 6 in pipe of 0.0004 ft, 1.1e-5 ft2/s. Printed 4.5 ft and 280 lbf/ft2,
    /// with a factor of 0.02 from the chart; tolerance 2 %, the two digits of 4.5.
    /// </summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void LossAt_WaterInAsphaltedIron_GivesThePublishedLoss()
    {
        const double foot = 0.3048;
        Hose pipe = Pipe(200 * foot, 0.5 * foot, 0.0004 * foot);
        VolumeFlow flow = VolumeFlow.FromCubicMetersPerSecond(6 * foot * Math.PI / 4 * 0.25 * foot * foot);
        Density water = Density.FromPoundsPerCubicFoot(62.4);
        var viscosity = DynamicViscosity.FromPascalSeconds(water.KilogramsPerCubicMeter * 1.1e-5 * foot * foot);

        Pressure loss = pipe.LossAt(flow, water, viscosity);

        Close.Within(0.02, 280, loss.PoundsForcePerSquareFoot);
        Close.Within(0.02, 4.5, loss.PoundsForcePerSquareFoot / 62.4);
    }

    /// <summary>
    /// Example 6.17: three pipes in parallel lose 20.3 m; printed flows 62.5, 25.9 and 11.4 m3/h. Water of 1.02e-6 m2/s.
    /// Head goes with nearly the square of flow, so half the last digit of a flow (0.05 of 11.4) is 0.9 % of head.
    /// </summary>
    [Theory]
    [Trait("Source", "White-2003")]
    [InlineData(100, 0.08, 0.24e-3, 62.5)]
    [InlineData(150, 0.06, 0.12e-3, 25.9)]
    [InlineData(80, 0.04, 0.20e-3, 11.4)]
    public void LossAt_ParallelPipes_GiveTheSharedHead(double length, double bore, double roughness, double perHour) =>
        Close.Within(0.01, 20.3, WaterHead(Pipe(length, bore, roughness), perHour));

    /// <summary>Example 6.16: the same three in series lose 20.3 m at a printed 10.2 m3/h; half its last digit is 1 %.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void LossAt_SeriesPipes_AddUpToTheHead() =>
        Close.Within(
            0.01,
            20.3,
            WaterHead(Pipe(100, 0.08, 0.24e-3), 10.2)
                + WaterHead(Pipe(150, 0.06, 0.12e-3), 10.2)
                + WaterHead(Pipe(80, 0.04, 0.20e-3), 10.2)
        );

    /// <summary>
    /// Example 8-3: water at 60 degrees Fahrenheit (62.36 lbm/ft3, 7.536e-4 lbm/(ft s)), 0.2 ft3/s through 200 ft of 2 in
    /// stainless steel of 0.000007 ft. Printed: 1700 lbf/ft2, 11.8 psi, 27.3 ft. Three digits, half of the last: 0.5 %.
    /// </summary>
    [Fact]
    [Trait("Source", "Cengel-Cimbala-2006")]
    public void LossAt_WaterInStainlessSteel_GivesThePublishedLoss()
    {
        const double foot = 0.3048;
        Hose pipe = Pipe(200 * foot, foot / 6, 0.000007 * foot);
        Density water = Density.FromPoundsPerCubicFoot(62.36);
        var viscosity = DynamicViscosity.FromPascalSeconds(7.536e-4 * 0.45359237 / foot);

        Pressure loss = pipe.LossAt(VolumeFlow.FromCubicFeetPerSecond(0.2), water, viscosity);

        Close.Within(0.005, 1700, loss.PoundsForcePerSquareFoot);
        Close.Within(0.005, 11.8, loss.PoundsForcePerSquareInch);
        Close.Within(0.005, 27.3, loss.PoundsForcePerSquareFoot / 62.36);
    }

    /// <summary>
    /// Example 8-7: 8 kW at 70 % lift water by 8 m through 36 m of 4 cm and 36 m of 8 cm side by side, commercial steel of
    /// 0.045 mm. Printed flows 0.0300, 0.00415 and 0.0259 m3/s. The head left for friction is 5600 W over the weight of the
    /// flow less 8 m; half the last digit of a flow is 0.4 % of it at most, and 1 % of head.
    /// </summary>
    [Theory]
    [Trait("Source", "Cengel-Cimbala-2006")]
    [InlineData(0.04, 0.00415)]
    [InlineData(0.08, 0.0259)]
    public void LossAt_TwoPipesBehindAPump_GiveTheSharedHead(double bore, double flow)
    {
        double head = (5600 / (998 * Gravity * 0.0300)) - 8;

        double lost = Pipe(36, bore, 0.045e-3)
            .LossAt(
                VolumeFlow.FromCubicMetersPerSecond(flow),
                Density.FromKilogramsPerCubicMeter(998),
                DynamicViscosity.FromPascalSeconds(1.002e-3)
            )
            .Pascals;

        Close.Within(0.01, head, lost / (998 * Gravity));
    }

    /// <summary>
    /// Example 7.13: fuel oil of specific gravity 0.815 and 2.7 cSt, 2 gal/s through 100 ft of 2.067 in. Printed 66 500 Pa and
    /// 9.65 psi with a factor of 0.0230 read from a chart; the implicit law at 0.0018 in gives 0.0227, hence 1.5 %.
    /// </summary>
    [Fact]
    [Trait("Source", "TP-410")]
    public void LossAt_FuelOilInTwoInchPipe_GivesThePublishedLoss()
    {
        Hose pipe = new(
            "2 in schedule 40",
            Length.FromFeet(100),
            Length.FromInches(2.067),
            Length.FromInches(0.0018),
            Ratio.Zero,
            HoseMeasures.Source
        );
        Density oil = Density.FromKilogramsPerCubicMeter(0.815 * 999.0);
        var viscosity = DynamicViscosity.FromPascalSeconds(oil.KilogramsPerCubicMeter * 2.7e-6);

        Pressure loss = pipe.LossAt(VolumeFlow.FromUsGallonsPerSecond(2), oil, viscosity);

        Close.Within(0.015, 66_500, loss.Pascals);
        Close.Within(0.015, 9.65, loss.PoundsForcePerSquareInch);
    }

    /// <summary>
    /// 10 kg/s of 1000 kg/m3 and 1e-5 Pa s through 1 m of a smooth 0.1 m bore: 63.43447321097365 Pa by the explicit factor of
    /// Clamond, which is the implicit law to rounding. Tolerance 1e-12.
    /// </summary>
    [Fact]
    [Trait("Source", "Fluids-library")]
    public void LossAt_SmoothPipe_GivesTheLibraryValue() =>
        Close.Within(
            1e-12,
            63.43447321097365,
            Pipe(1, 0.1, 0)
                .LossAt(
                    VolumeFlow.FromCubicMetersPerSecond(0.01),
                    Density.FromKilogramsPerCubicMeter(1000),
                    DynamicViscosity.FromPascalSeconds(1e-5)
                )
                .Pascals
        );

    /// <summary>Laminar flow in closed form: dp = 128 mu L Q / (pi D4).</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void LossAt_Laminar_GivesTheClosedForm()
    {
        Hose hose = Pipe(3, 0.008, 1e-5);
        double flow = 1e-6;

        Close.Within(
            1e-13,
            128 * 0.5e-3 * 3 * flow / (Math.PI * Math.Pow(0.008, 4)),
            hose.LossAt(VolumeFlow.FromCubicMetersPerSecond(flow), Petrol, Thin).Pascals
        );
    }

    /// <summary>A pipe into a large tank loses its whole velocity head, K = 1: the same in every handbook.</summary>
    [Fact]
    [Trait("Source", "TP-410")]
    public void LossAt_ExitIntoATank_LosesTheVelocityHead()
    {
        Hose without = Pipe(1, 0.01, 1e-6);
        Hose with = new(
            "with exit",
            without.Length,
            without.Bore,
            without.Roughness,
            Ratio.FromDecimalFractions(1),
            HoseMeasures.Source
        );
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(400);
        double speed = without.VelocityAt(flow).MetersPerSecond;

        Pressure more = with.LossAt(flow, Petrol, Thin) - without.LossAt(flow, Petrol, Thin);

        Close.Within(1e-11, 740 * speed * speed / 2, more.Pascals);
    }

    [Fact]
    [Trait("Source", "Definition")]
    public void EnclosedVolume_IsThatOfACylinder() =>
        Close.Within(1e-14, Math.PI / 4 * 0.01 * 0.01 * 3, Pipe(3, 0.01, 0).EnclosedVolume.CubicMeters);

    // ---- Properties ---------------------------------------------------------------------------------------

    [Property]
    public void LossAt_NoFlow_IsNone(HoseMeasures measures) =>
        Assert.Equal(0, measures.ToHose().LossAt(VolumeFlow.Zero, Petrol, Thin).Pascals);

    [Property]
    public void LossAt_OtherDirection_TurnsItsSign(HoseMeasures measures, HoseFlow flow)
    {
        Hose hose = measures.ToHose();

        Assert.Equal(
            -hose.LossAt(flow.Flow, Petrol, Thin).Pascals,
            hose.LossAt(VolumeFlow.FromLitersPerHour(-flow.LitersPerHour), Petrol, Thin).Pascals
        );
    }

    [Property]
    public void LossAt_MoreFlow_LosesMore(HoseMeasures measures, HoseFlow flow)
    {
        Hose hose = measures.ToHose();
        double less = Math.Abs(hose.LossAt(flow.Flow, Petrol, Thin).Pascals);
        double more = Math.Abs(hose.LossAt(flow.Flow * 1.001, Petrol, Thin).Pascals);

        Assert.True(less < more);
    }

    /// <summary>Two hoses end to end lose what one of twice the length and twice the coefficient loses.</summary>
    [Property]
    public void LossAt_TwiceTheHose_LosesTwice(HoseMeasures measures, HoseFlow flow)
    {
        Hose twice = (measures with { LengthMeters = 2 * measures.LengthMeters, Loss = 2 * measures.Loss }).ToHose();
        double once = measures.ToHose().LossAt(flow.Flow, Petrol, Thin).Pascals;

        Close.Within(1e-13, 2 * once, twice.LossAt(flow.Flow, Petrol, Thin).Pascals);
    }

    /// <summary>
    /// Dynamic similarity: everything k times as long, flow k times (the same Reynolds number), loses 1/k2 of the pressure.
    /// The factor is computed to rounding; its slope in the Reynolds number is below one.
    /// </summary>
    [Property]
    public void LossAt_SameReynoldsNumber_ScalesWithTheSquareOfLength(HoseMeasures measures, HoseFlow flow)
    {
        HoseMeasures large = measures with
        {
            BoreMillimeters = 3 * measures.BoreMillimeters,
            LengthMeters = 3 * measures.LengthMeters,
        };
        double small = measures.ToHose().LossAt(flow.Flow, Petrol, Thin).Pascals;

        Close.Within(1e-11, small / 9, large.ToHose().LossAt(flow.Flow * 3, Petrol, Thin).Pascals);
    }

    [Property]
    public void LossAt_OtherUnits_IsTheSame(HoseMeasures measures, HoseFlow flow)
    {
        Hose metric = measures.ToHose();
        Hose inches = new(
            "inches",
            metric.Length.ToUnit(LengthUnit.Foot),
            metric.Bore.ToUnit(LengthUnit.Inch),
            Length.FromMicroinches(metric.Roughness.Microinches * (1 - 1e-15)),
            metric.LossCoefficient.ToUnit(RatioUnit.Percent),
            HoseMeasures.Source
        );

        // The bore counts with its fifth power, and a unit round trip moves it by up to 2e-12.
        Close.Within(
            1e-10,
            metric.LossAt(flow.Flow, Petrol, Thin).Pascals,
            inches
                .LossAt(
                    flow.Flow.ToUnit(VolumeFlowUnit.UsGallonPerHour),
                    Petrol.ToUnit(DensityUnit.PoundPerCubicFoot),
                    Thin.ToUnit(DynamicViscosityUnit.Centipoise)
                )
                .Pascals
        );
    }

    [Fact]
    public void FromDash_TakesTheBoreOfTheStandard() =>
        Assert.Equal(
            HoseStandard.Sae100R5.BoreOf(8).Meters,
            Hose.FromDash(
                "h",
                HoseStandard.Sae100R5,
                8,
                Length.FromMeters(1),
                Length.Zero,
                Ratio.Zero,
                HoseMeasures.Source
            ).Bore.Meters
        );

    private static Hose Pipe(double length, double bore, double roughness) =>
        new(
            "pipe",
            Length.FromMeters(length),
            Length.FromMeters(bore),
            Length.FromMeters(roughness),
            Ratio.Zero,
            HoseMeasures.Source
        );

    private static double WaterHead(Hose pipe, double cubicMetersPerHour)
    {
        Pressure loss = pipe.LossAt(
            VolumeFlow.FromCubicMetersPerHour(cubicMetersPerHour),
            Density.FromKilogramsPerCubicMeter(1000),
            DynamicViscosity.FromPascalSeconds(1000 * 1.02e-6)
        );
        return loss.Pascals / (1000 * Gravity);
    }
}
