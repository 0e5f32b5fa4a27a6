using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>
/// Each law by itself: loss and slope at a flow, its own scale of flow and of slope, worked out by hand from what the law
/// says. Density 800 kg/m3, viscosity 5e-4 Pa s; the weight of fuel is 700 Pa at one end and 200 at the other.
/// </summary>
public sealed class LawByHandTests
{
    private const double Density = 800;
    private const double Viscosity = 5e-4;
    private const double Exact = 1e-12;

    private static readonly Surroundings<Real> Level = new(new(Density), new(Viscosity));
    private static readonly Surroundings<Real> Heads = new(new(Density), new(Viscosity), new(700), new(200));

    /// <summary>6e7 q + 4e11 q2: 6 and 4 kPa at 1e-4 m3/s, which is the scale of 10 kPa.</summary>
    private static readonly SquareSettings Square = new()
    {
        LinearPerViscosity = 6e7 / Viscosity,
        SquarePerDensity = 4e11 / Density,
        Opening = 3000,
    };

    [Theory]
    [InlineData(2e-4, 3000 + 12_000 + 16_000, 6e7 + 16e7)]
    [InlineData(-2e-4, 3000 - 12_000 - 16_000, 6e7 + 16e7)]
    [InlineData(0, 3000, 6e7)]
    public void SquareLaw_IsItsTwoTermsOverItsOpening(double flow, double loss, double slope)
    {
        SquareLaw<Real> law = Of<SquareLaw<Real>>(Square, Heads);

        Loses(law, flow, loss, slope);
        Scales(law, 1e-4, 1e4 / 1e-4);
    }

    /// <summary>Into a space the weight of the fuel is added: 500 Pa. 4e11 q2 is 250 kPa at 7.9e-4 m3/s.</summary>
    [Fact]
    public void SquareLaw_IntoASpace_FeelsTheWeightOfTheFuel()
    {
        SquareLaw<Real> law = Of<SquareLaw<Real>>(
            new SquareSettings
            {
                SquarePerDensity = 4e11 / Density,
                IntoSpace = true,
                Scale = 2.5e5,
            },
            Heads
        );

        Loses(law, 1e-4, 500 + 4000, 8e7);
        Scales(law, Math.Sqrt(2.5e5 / 4e11), 2.5e5 / Math.Sqrt(2.5e5 / 4e11));
    }

    /// <summary>
    /// Bore 10 mm, 2 m, K = 3. Laminar: 128 mu L q / pi d4, and K rho v2 / 2 on top. It starts at 0.6 m/s with a friction
    /// factor of 0.03: (0.03 L/d + K) rho v2 / 2.
    /// </summary>
    [Theory]
    [InlineData(1e-6)]
    [InlineData(-1e-6)]
    public void PipeLaw_Laminar_IsHagenAndPoiseuilleWithItsBends(double flow)
    {
        const double area = Math.PI / 4 * 1e-4;
        double laminar = 128 * Viscosity * 2 / (Math.PI * 1e-8);
        double minor = 3 * Density / 2 / (area * area);
        PipeLaw<Real, ColebrookFriction> law = Of<PipeLaw<Real, ColebrookFriction>>(
            new PipeSettings(2, 0.01, 1e-5, 3, Pipe.FrictionLaw.ColebrookStraightPassage, false),
            Heads
        );

        Loses(law, flow, (laminar * flow) + (minor * flow * Math.Abs(flow)), laminar + (2 * minor * Math.Abs(flow)));
        Scales(law, 0.6 * area, ((0.03 * 200) + 3) * Density / 2 * 0.6 * 0.6 / (0.6 * area));
    }

    /// <summary>
    /// 20 kPa at 1e-5 m3/s, with an exponent of 0.4 of pressure: loss goes with flow to 2.5, as the root of density does.
    /// Its scale is the reading.
    /// </summary>
    [Theory]
    [InlineData(800, 1e-5, 2e4)]
    [InlineData(800, 4e-5, 2e4 * 32)]
    [InlineData(3200, 1e-5, 2e4 * 0.17677669529663689)]
    [InlineData(200, 1e-5, 2e4 * 5.6568542494923806)]
    public void PowerLaw_IsThePowerOfItsReading(double measuredWith, double flow, double loss)
    {
        PowerLaw<Real> law = Of<PowerLaw<Real>>(new PowerSettings(1e-5, 2e4, measuredWith, 0.4), Level);

        Loses(law, flow, loss, 2.5 * loss / flow);
        Scales(law, 1e-5, 2e9);
    }

    /// <summary>500 kPa less 3e12 q^1.5; its scale is where it has fallen to half.</summary>
    [Theory]
    [InlineData(4e-6, 500e3 - 24e3, 9000e6)]
    [InlineData(1e-6, 500e3 - 3e3, 4500e6)]
    public void PumpPowerLaw_FallsWithItsPower(double flow, double rise, double slope)
    {
        PumpPowerLaw<Real> law = Of<PumpPowerLaw<Real>>(new PumpPowerSettings(500e3, 3e12, 1.5), Level);
        double half = Math.Pow(250e3 / 3e12, 2.0 / 3);

        Loses(law, flow, -rise, slope);
        Scales(law, half, 500e3 / half);

        // A billionth of that scale stands for less: the slope at no flow.
        Assert.Equal(3e12 * Math.Pow(1e-9 * half, 1.5), 500e3 + At(law, 0).Loss.Number.Value, 1e-15 * 500e3);
    }

    /// <summary>Two pumps abreast share the flow, three in a row add their rises.</summary>
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 1)]
    [InlineData(1, 2)]
    [InlineData(2, 2)]
    [InlineData(1, 1)]
    public void Set_ABank_SharesItsFlowAndAddsItsRises(int abreast, int inARow)
    {
        double[] power = Numbers(new PumpPowerSettings(500e3, 3e12, 1.5).Set(abreast, inARow));
        double half = Math.Pow(250e3 / 3e12, 2.0 / 3);
        Piece[] pieces = [new(0, 9, -1, 2, -3), new(0, 9, -1, 2, -3), new(4, 2, -2, 0, 0)];
        var table = (PumpTableSettings)
            new PumpTableSettings(pieces, true, VolumeFlow.FromLitersPerHour(1)).Set(abreast, inARow);

        Close.Within(Exact, inARow * 500e3, power[0]);
        Close.Within(Exact, inARow * 3e12 / Math.Pow(abreast, 1.5), power[1]);
        Close.Within(Exact, abreast * half, power[2]);
        Assert.True(table.Extend);
        foreach (double flow in new[] { 0, 0.5, 3, 4.5, 6 })
        {
            Piece one = flow < 4 ? pieces[0] : pieces[2];
            Piece all = flow < 4 ? table.Pieces[1] : table.Pieces[2];
            Close.Within(Exact, inARow * one.At(flow), all.At(abreast * flow));
        }

        Assert.Equal(abreast * 4.0, table.Pieces[2].X0);
    }

    /// <summary>From 300 kPa at no flow down to 600 below at 2e-4 m3/s: the greater of both ends is its scale.</summary>
    [Theory]
    [InlineData(300e3, -600e3, 600e3)]
    [InlineData(600e3, 100e3, 600e3)]
    public void PumpTableLaw_HasTheScaleOfItsEnds(double atNoFlow, double atEnd, double pressure)
    {
        PumpTableLaw<Real> law = Of<PumpTableLaw<Real>>(Table(true, (0, atNoFlow), (2e-4, atEnd)), Level);
        double slope = (atEnd - atNoFlow) / 2e-4;

        Loses(law, 5e-5, -(atNoFlow + (slope * 5e-5)), -slope);
        Loses(law, 3e-4, -(atNoFlow + (slope * 3e-4)), -slope);
        Scales(law, 1e-4, pressure / 2e-4);
        Assert.Equal((0.0, 2e-4), (law.Begin.Value, law.End.Value));
    }

    /// <summary>
    /// A table from 1e-4 to 3e-4 m3/s: within a billionth of its span it is inside, below zero the check valve is shut, and
    /// one that goes on beyond its ends is never outside.
    /// </summary>
    [Theory]
    [InlineData(2e-4, 0)]
    [InlineData(1e-4 * (1 - 0.9e-9), 0)]
    [InlineData(3e-4 * (1 + 0.6e-9), 0)]
    [InlineData(0.4e-4, 0.6e-4)]
    [InlineData(3.5e-4, 0.5e-4)]
    [InlineData(-1e-5, 0)]
    public void PumpTableLaw_SaysByHowMuchAFlowIsOutside(double flow, double by)
    {
        PumpTableLaw<Real> law = Of<PumpTableLaw<Real>>(Table(false, (1e-4, 300e3), (3e-4, 100e3)), Level);
        PumpTableLaw<Real> open = Of<PumpTableLaw<Real>>(Table(true, (1e-4, 300e3), (3e-4, 100e3)), Level);

        Assert.Equal(by, PumpTableLaw<Real>.OutsideData(ref law, new(flow)).Value, 1e-18);
        Assert.Equal(0, PumpTableLaw<Real>.OutsideData(ref open, new(flow)).Value);
    }

    [Theory]
    [InlineData(1e-4 * (1 - 1.1e-9))]
    [InlineData(3e-4 + (1.1e-9 * 2e-4))]
    public void PumpTableLaw_JustBeyondItsTolerance_IsOutside(double flow)
    {
        PumpTableLaw<Real> law = Of<PumpTableLaw<Real>>(Table(false, (1e-4, 300e3), (3e-4, 100e3)), Level);

        Assert.InRange(PumpTableLaw<Real>.OutsideData(ref law, new(flow)).Value, 1e-14, 3e-13);
    }

    /// <summary>
    /// It holds 300 kPa over 20, with 4 % of what stands behind it, 1e8 Pa per m3/s more; wide open 5e11 q2. Heads count at
    /// the side that is held, the other one by its influence.
    /// </summary>
    [Theory]
    [InlineData(1e-4, 0, 300e3 + (20e3 * 1.04) + 700 + (0.04 * 200) + 1e4, 1e8, -0.04)]
    [InlineData(1e-3, 0, 5e5, 1e9, 1)]
    [InlineData(5e-4, 300e3, 5e11 * 25e-8, 5e8, 1)]
    public void RegulatorLaw_Bypass_HoldsItsInletOrStandsOpen(
        double flow,
        double behind,
        double loss,
        double slope,
        double weight
    )
    {
        RegulatorLaw<Real, UpstreamSide> law = Of<RegulatorLaw<Real, UpstreamSide>>(Regulator(true), Heads);
        Real memory = default;

        Balance<Real> balance = law.At(
            Dual<Real>.Variable(new(flow)),
            new(0),
            new(behind),
            new(Stiff.Reverse),
            ref memory
        );

        Close.Within(Exact, loss, balance.Loss.Number.Value);
        Close.Within(Exact, slope, balance.Loss.Rate.Value);
        Assert.Equal((1.0, weight), (balance.Up.Value, balance.Down.Value));
        Scales(law, Math.Sqrt(1e3 / 5e11), 1e5 / Math.Sqrt(1e3 / 5e11));
    }

    [Theory]
    [InlineData(1e-4, 900e3, 1e4 - (300e3 + (20e3 * 1.04) + 200 + (0.04 * 700)), 1e8, -0.04)]
    [InlineData(1e-3, 600e3, 5e5, 1e9, 1)]
    public void RegulatorLaw_Reducing_HoldsItsOutletOrStandsOpen(
        double flow,
        double ahead,
        double loss,
        double slope,
        double weight
    )
    {
        RegulatorLaw<Real, DownstreamSide> law = Of<RegulatorLaw<Real, DownstreamSide>>(Regulator(false), Heads);
        Real memory = default;

        Balance<Real> balance = law.At(
            Dual<Real>.Variable(new(flow)),
            new(ahead),
            new(0),
            new(Stiff.Reverse),
            ref memory
        );

        Close.Within(Exact, loss, balance.Loss.Number.Value);
        Close.Within(Exact, slope, balance.Loss.Rate.Value);
        Assert.Equal((weight, 1.0), (balance.Up.Value, balance.Down.Value));
    }

    /// <summary>What a regulator does, on either side of where it is seated, regulates or stands open.</summary>
    [Theory]
    [InlineData(true, -1e-9, Network.LineCondition.Seated)]
    [InlineData(true, 1e-7, Network.LineCondition.Seated)]
    [InlineData(true, 1.1e-7, Network.LineCondition.Regulating)]
    [InlineData(true, 8.1e-4, Network.LineCondition.Regulating)]
    [InlineData(true, 9.1e-4, Network.LineCondition.FullyOpen)]
    [InlineData(false, 1e-7, Network.LineCondition.Seated)]
    [InlineData(false, 1.1e-7, Network.LineCondition.Regulating)]
    [InlineData(false, 1.1e-3, Network.LineCondition.Regulating)]
    [InlineData(false, 1.3e-3, Network.LineCondition.FullyOpen)]
    public void RegulatorLaw_Condition_FollowsItsFlow(bool bypass, double flow, Network.LineCondition expected)
    {
        // Bypass, nothing behind: 321.5 kPa and 1e8 q held, 5e11 q2 wide: 9.08e-4. Reducing from 900: 900 - 5e11 q2 falls
        // to 285.03 - 1e8 q, which is 321.03 less 4 % of 900, at 1.21e-3.
        RegulatorLaw<Real, UpstreamSide> back = Of<RegulatorLaw<Real, UpstreamSide>>(Regulator(true), Heads);
        RegulatorLaw<Real, DownstreamSide> reducing = Of<RegulatorLaw<Real, DownstreamSide>>(Regulator(false), Heads);
        (Real q, Real none, Real noFlow) = (new(flow), new(0), new(1e-7));

        Real found = bypass
            ? RegulatorLaw<Real, UpstreamSide>.Condition(ref back, q, none, none, noFlow)
            : RegulatorLaw<Real, DownstreamSide>.Condition(ref reducing, q, new(900e3), none, noFlow);

        Assert.Equal(expected, (Network.LineCondition)(int)found.Value);
    }

    /// <summary>
    /// 1e-4 m3/s at 300 kPa of a fluid half as dense: 2 q2 / c2, and 500 Pa for the weight. Beyond its command it is steep;
    /// it starts at the lesser of command and what it gives held open.
    /// </summary>
    [Theory]
    [InlineData(4e-5, 5e-5, 5e-5)]
    [InlineData(4e-5, 9e-5, 7.0710678118654752e-5)]
    public void CappedLaw_IsAnOrificeUpToItsCommand(double flow, double commanded, double first)
    {
        double square = 2 * 300e3 / 1e-8;
        CappedLaw<Real> law = Of<CappedLaw<Real>>(
            new CappedSettings(1e-4 / Math.Sqrt(300e3), commanded) { MeasuredDensity = Density / 2 },
            Heads
        );

        Loses(law, flow, 500 + (square * flow * flow), 2 * square * flow);
        Loses(law, 2e-4, 500 + (square * 4e-8) + (Stiff.Reverse * (2e-4 - commanded)), Stiff.Reverse + (square * 4e-4));
        Loses(law, -2e-5, 500 - (square * 4e-10) - (Stiff.Reverse * 2e-5), Stiff.Reverse + (square * 4e-5));
        Scales(law, first, 300e3 / (1e-4 / Math.Sqrt(2)));
    }

    /// <summary>A warm start goes on with the old flow where the pressure decides, and begins at the command where that does.</summary>
    [Theory]
    [InlineData(5e-5, 5e-5)]
    [InlineData(9e-5, 1.5e-5)]
    public void CappedLaw_Set_SaysWhereAWarmStartBegins(double commanded, double begins)
    {
        var settings = new CappedSettings(1, 0) { MeasuredDensity = Density };
        CappedLaw<Real> law = Of<CappedLaw<Real>>(settings, Level);

        Real flow = CappedLaw<Real>.Set(ref law, [new(7e-5 / Math.Sqrt(300e3)), new(commanded)], new(1.5e-5));

        Assert.Equal(begins, flow.Value);
        Assert.Equal(commanded, law.Commanded.Value);
    }

    [Theory]
    [InlineData(5e-5, 6e-5, Network.LineCondition.HeldOpen)]
    [InlineData(6e-5, 6e-5, Network.LineCondition.Commanded)]
    [InlineData(1e-7, 6e-5, Network.LineCondition.Shut)]
    [InlineData(1e-9, 0, Network.LineCondition.Shut)]
    [InlineData(0, 0, Network.LineCondition.Shut)]
    public void CappedLaw_Condition_FollowsItsFlow(double flow, double commanded, Network.LineCondition expected)
    {
        CappedLaw<Real> law = Of<CappedLaw<Real>>(new CappedSettings(1e-7, commanded), Level);

        Real found = CappedLaw<Real>.Condition(ref law, new(flow), default, default, new(1e-7));

        Assert.Equal(expected, (Network.LineCondition)(int)found.Value);
        Assert.Equal(Math.Max(0, flow - commanded), CappedLaw<Real>.Trespass(ref law, new(flow)).Value);
        Assert.Equal(2e-5, CappedLaw<Real>.Trespass(ref law, new(commanded + 2e-5)).Value, 1e-18);
        Assert.Equal(3e-5, CappedLaw<Real>.Trespass(ref law, new(-3e-5)).Value, 1e-18);
    }

    /// <summary>A check valve adds a steep branch below no flow, a billion times that of a pump; a stopped pump is one.</summary>
    [Fact]
    public void OneWayLaw_IsItsLawAndSteepBelowNoFlow()
    {
        OneWayLaw<Real, SquareLaw<Real>> law = Of<OneWayLaw<Real, SquareLaw<Real>>>(Square, Level);
        StoppedLaw<Real> stopped = default;

        Loses(law, 1e-4, 3000 + 6000 + 4000, 6e7 + 8e7);
        Loses(law, -1e-4, 3000 - 6000 - 4000 - (1e30 * 1e-4), 1e30 + 14e7);
        Scales(law, 1e-4, 1e8);
        Loses(stopped, -2e-9, -2e12, 1e21);
        Loses(stopped, 2e-9, 2e12, 1e21);
        Scales(stopped, 0, 1e12);
        Assert.Equal(2e-9, StoppedLaw<Real>.Trespass(ref stopped, new(-2e-9)).Value);
    }

    /// <summary>Each one-way part trespasses by what flows back, and by nothing that flows on.</summary>
    [Theory]
    [InlineData(3e-5, 0)]
    [InlineData(0, 0)]
    [InlineData(-3e-5, 3e-5)]
    public void Trespass_OfOneWayParts_IsWhatFlowsBack(double flow, double expected)
    {
        Real q = new(flow);
        OneWayLaw<Real, SquareLaw<Real>> check = Of<OneWayLaw<Real, SquareLaw<Real>>>(Square, Level);
        PumpTableLaw<Real> table = Of<PumpTableLaw<Real>>(Table(true, (0, 1e5), (1e-4, 0)), Level);
        PumpPowerLaw<Real> power = Of<PumpPowerLaw<Real>>(new PumpPowerSettings(500e3, 3e12, 1.5), Level);
        RegulatorLaw<Real, UpstreamSide> bypass = Of<RegulatorLaw<Real, UpstreamSide>>(Regulator(true), Level);
        RegulatorLaw<Real, DownstreamSide> reducing = Of<RegulatorLaw<Real, DownstreamSide>>(Regulator(false), Level);

        Assert.Equal(expected, OneWayLaw<Real, SquareLaw<Real>>.Trespass(ref check, q).Value);
        Assert.Equal(expected, PumpTableLaw<Real>.Trespass(ref table, q).Value);
        Assert.Equal(expected, PumpPowerLaw<Real>.Trespass(ref power, q).Value);
        Assert.Equal(expected, RegulatorLaw<Real, UpstreamSide>.Trespass(ref bypass, q).Value);
        Assert.Equal(expected, RegulatorLaw<Real, DownstreamSide>.Trespass(ref reducing, q).Value);
    }

    /// <summary>
    /// Read with 400 kg/m3 and 2.5e-4 Pa s: in a fluid of half the kinematic viscosity flows halve, and losses are those of
    /// twice the density at a quarter of the flow squared.
    /// </summary>
    [Theory]
    [InlineData(800, 2.5e-4)]
    [InlineData(1600, 5e-4)]
    public void LossTableLaw_KeepsItsReynoldsNumber(double density, double viscosity)
    {
        Piece[] pieces = [new(0, 0, 1e8, 0, 0), new(0, 0, 1e8, 0, 0), new(2e-4, 2e4, 3e8, 0, 0)];
        LossTableLaw<Real> law = Of<LossTableLaw<Real>>(
            new LossTableSettings("part", pieces, VolumeFlow.FromLitersPerHour(1), 400, 6.25e-7),
            new(new(density), new(viscosity))
        );
        double lift = density / 400 / 4;

        Assert.Equal(1e-4, law.GreatestFlow.Value, 1e-18);
        Loses(law, 4e-5, lift * 8e3, lift * 2e8);
        Loses(law, -4e-5, -lift * 8e3, lift * 2e8);
        Loses(law, 1.5e-4, lift * 5e4, lift * 6e8);
        Scales(law, 0.5e-4, lift * 2e4 / 1e-4);
        Assert.Equal(2e-5, LossTableLaw<Real>.Trespass(ref law, new(-1.2e-4)).Value, 1e-18);
        Assert.Equal(0, LossTableLaw<Real>.Trespass(ref law, new(0.9e-4)).Value);
    }

    /// <summary>5 mm coiled to 100 mm: the law is known to a Reynolds number of 300 over curvature squared, 120 000.</summary>
    [Fact]
    public void CurvedPipeLaw_IsKnownToAReynoldsNumber()
    {
        CurvedPipeLaw<Real> law = Of<CurvedPipeLaw<Real>>(new CurvedSettings(1, 5e-3, 0, 0, 0.1), Level);
        double most = 120_000 * Viscosity * Math.PI * 5e-3 / 4 / Density;

        Close.Within(Exact, 60_000, law.ReynoldsAt(new(most / 2)).Value);
        Close.Within(Exact, 60_000, law.ReynoldsAt(new(-most / 2)).Value);
        Assert.Equal(0, CurvedPipeLaw<Real>.Trespass(ref law, new(0.999 * most)).Value);
        Close.Within(1e-9, 1e-3 * most, CurvedPipeLaw<Real>.Trespass(ref law, new(1.001 * most)).Value);
        Close.Within(1e-9, 1e-3 * most, CurvedPipeLaw<Real>.Trespass(ref law, new(-1.001 * most)).Value);
    }

    /// <summary>A caller's law starts at its usual flow, with its slope from no flow to there.</summary>
    [Fact]
    public void CustomLaw_StartsAtItsUsualFlow()
    {
        OwnLaws.Porous porous = new(6e7 / Viscosity, 4e11 / Density);
        CustomLaw<Real, OwnLaws.Porous> law = Of<CustomLaw<Real, OwnLaws.Porous>>(
            new CustomSettings<OwnLaws.Porous>(porous, 2e-4),
            Level
        );

        Loses(law, 2e-4, 28e3, 6e7 + 16e7);
        Scales(law, 2e-4, 28e3 / 2e-4);
    }

    private static TLaw Of<TLaw>(LawSettings settings, Surroundings<Real> around)
        where TLaw : struct, ILinkLaw<TLaw, Real>
    {
        TLaw law = default;
        law.Load(settings);
        law.Carry(settings, around);
        return law;
    }

    private static Balance<Real> At<TLaw>(TLaw law, double flow)
        where TLaw : struct, ILinkLaw<TLaw, Real>
    {
        Real memory = new(6.5);
        return law.At(Dual<Real>.Variable(new(flow)), default, default, new(Stiff.Reverse), ref memory);
    }

    private static void Loses<TLaw>(TLaw law, double flow, double loss, double slope)
        where TLaw : struct, ILinkLaw<TLaw, Real>
    {
        Balance<Real> balance = At(law, flow);
        Close.Within(Exact, loss, balance.Loss.Number.Value);
        Close.Within(Exact, slope, balance.Loss.Rate.Value);
        Assert.Equal((1.0, 1.0), (balance.Up.Value, balance.Down.Value));
    }

    private static void Scales<TLaw>(TLaw law, double flow, double slope)
        where TLaw : struct, ILinkLaw<TLaw, Real>
    {
        Close.Within(Exact, flow, law.FirstFlow.Value);
        Close.Within(Exact, slope, law.UsualSlope.Value);
    }

    private static double[] Numbers(PumpSettings settings)
    {
        double[] numbers = new double[settings.SettingCount];
        settings.Write(numbers);
        return numbers;
    }

    private static PumpTableSettings Table(
        bool extend,
        (double Flow, double Rise) begin,
        (double Flow, double Rise) end
    )
    {
        double slope = (end.Rise - begin.Rise) / (end.Flow - begin.Flow);
        Piece first = new(begin.Flow, begin.Rise, slope, 0, 0);
        return new([first, first, new(end.Flow, end.Rise, slope, 0, 0)], extend, VolumeFlow.FromLitersPerHour(1));
    }

    private static RegulatorSettings Regulator(bool bypass) =>
        new()
        {
            Bypass = bypass,
            Setting = 300e3,
            Reference = 20e3,
            Slope = 1e8,
            Influence = 0.04,
            SquarePerDensity = 5e11 / Density,
        };
}
