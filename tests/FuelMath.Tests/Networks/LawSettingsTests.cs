using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What the settings of each law answer before and after a solve: its nature, its level at no flow, its error.</summary>
public sealed class LawSettingsTests
{
    private static readonly Piece[] Falling = [new(0, 9, -1, 0, 0), new(0, 9, -1, 0, 0), new(4, 5, -1, 0, 0)];

    private static readonly Dictionary<string, LawSettings> Laws = new()
    {
        ["pipe"] = new PipeSettings(1, 5e-3, 0, 0, Pipe.FrictionLaw.ColebrookStraightPassage, false),
        ["check pipe"] = new PipeSettings(1, 5e-3, 0, 0, Pipe.FrictionLaw.SwameeJainCubicPassage, true),
        ["curved"] = new CurvedSettings(1, 5e-3, 0, 0, 0.1),
        ["square"] = new SquareSettings { SquarePerDensity = 1e8 },
        ["check"] = new SquareSettings { SquarePerDensity = 1e8, OneWay = true },
        ["nozzle"] = new SquareSettings { SquarePerDensity = 1e8, IntoSpace = true },
        ["power"] = new PowerSettings(1e-5, 2e4, 800, 0.4),
        ["table"] = new LossTableSettings("part", Falling, VolumeFlow.Zero, 800, 1e-6),
        ["custom"] = new CustomSettings<OwnLaws.Porous>(new(1e11, 1e9), 1e-5),
        ["injector"] = new CappedSettings(1e-7, 1e-5),
        ["pump table"] = new PumpTableSettings(Falling, true, VolumeFlow.Zero),
        ["pump power"] = new PumpPowerSettings(500e3, 3e12, 1.5),
        ["stopped"] = new StoppedSettings(),
        ["bypass"] = new RegulatorSettings { Bypass = true, Setting = 3e5 },
        ["reducing"] = new RegulatorSettings { Setting = 3e5 },
        ["bypass that rises"] = new RegulatorSettings { Bypass = true, Slope = 1 },
        ["bypass with influence"] = new RegulatorSettings { Bypass = true, Influence = 0.01 },
    };

    [Fact]
    public void Nature_OfEachLaw_IsWhatItsPartDoes()
    {
        Are(["check pipe", "check", "injector", "pump table", "pump power", "stopped", .. Regulators], l => l.IsOneWay);
        Are(["injector", .. Regulators], l => !l.Joins);
        Are(["pump table", "pump power"], l => l.IsPump);
        Are(["nozzle", "injector"], l => l.NeedsSpace);
        Are(["bypass with influence"], l => l.IsOpenedFromBehind);
        Are(Regulators, l => l.Settable == SettingKind.Reference);
        Are(["injector"], l => l.Settable == SettingKind.Command);
        Are(["pump table", "pump power"], l => l.Settable == SettingKind.Curve);
        Are(Regulators, l => l.SettingCount == 1);
        Are(["injector"], l => l.SettingCount == 2);
        Are(["pump power"], l => l.SettingCount == 3);
        Are(["pump table"], l => l.SettingCount == 15);
        Are([], l => l.HumpedCurve.Length > 0);

        static void Are(string[] expected, Func<LawSettings, bool> nature) =>
            Assert.Equal(expected, Laws.Where(l => nature(l.Value)).Select(l => l.Key));
    }

    private static string[] Regulators => ["bypass", "reducing", "bypass that rises", "bypass with influence"];

    /// <summary>A regulator that holds one pressure whatever flows: at its inlet or its outlet; no other part does.</summary>
    [Fact]
    public void FlatlyHeld_IsTheSideThatARegulatorHolds() =>
        Assert.All(
            Laws,
            l =>
                Assert.Equal(
                    l.Key switch
                    {
                        "bypass" => 3,
                        "reducing" => 4,
                        _ => -1,
                    },
                    l.Value.FlatlyHeld(3, 4)
                )
        );

    /// <summary>Laws that are not alike stand in groups of their own.</summary>
    [Fact]
    public void Law_PartsThoseThatDiffer()
    {
        object[] alike =
        [
            Laws["pipe"].Law,
            Laws["check pipe"].Law,
            new PipeSettings(1, 5e-3, 0, 0, Pipe.FrictionLaw.ColebrookStraightPassage, true).Law,
            Laws["square"].Law,
            Laws["check"].Law,
            Laws["bypass"].Law,
            Laws["reducing"].Law,
            Laws["curved"].Law,
        ];

        Assert.Equal(alike.Length, alike.Distinct().Count());
        Assert.Equal(Laws["square"].Law, Laws["nozzle"].Law);
        Assert.Equal(Laws["bypass"].Law, Laws["bypass that rises"].Law);
    }

    /// <summary>
    /// What fills through a shut part with 400 kPa ahead of it: a check valve its opening less, a pump its shutoff more, a
    /// reducing regulator as far as it holds; a bypass regulator holds its inlet, not what is behind it, and lets all through
    /// once it is open; a stopped pump nothing.
    /// </summary>
    [Theory]
    [InlineData("check", 380)]
    [InlineData("pump", 900)]
    [InlineData("power", 700)]
    [InlineData("reducing", 284)]
    [InlineData("bypass above", double.NegativeInfinity)]
    [InlineData("bypass below", 400)]
    [InlineData("stopped", double.NegativeInfinity)]
    public void FilledTo_IsTheLevelAtNoFlow(string part, double kilopascals)
    {
        LawSettings law = part switch
        {
            "check" => new SquareSettings
            {
                SquarePerDensity = 1e8,
                OneWay = true,
                Opening = 20e3,
            },
            "pump" => Straight(OutsideRange.Extend, (0, 500), (100, 400)).Law,
            "power" => new PumpPowerSettings(300e3, 3e12, 1.5),
            "reducing" => new RegulatorSettings
            {
                Setting = 300e3,
                Influence = 0.04,
                SquarePerDensity = 1e8,
            },
            "stopped" => new StoppedSettings(),
            _ => new RegulatorSettings
            {
                Bypass = true,
                Setting = part == "bypass above" ? 500e3 : 300e3,
                SquarePerDensity = 1e8,
            },
        };
        Network network = new Network(
            [Fixed("a", 0), Fixed("b", 0)],
            [
                new Line("part", "a", "b", new LawPart(law)),
                new Line("hose", "a", "b", new PlainFitting(Length.FromMillimeters(5), Ratio.FromDecimalFractions(1))),
            ]
        ).At(new(Density.FromKilogramsPerCubicMeter(800), DynamicViscosity.FromPascalSeconds(5e-4)));
        using NetworkWork<Real> work = network.Plan.Rent<Real>();

        // The power of a pump ends a billionth of its scale above no flow.
        double filled = law.FilledTo(work, 0, 400e3) / 1e3;

        Assert.True(
            filled.Equals(kilopascals) || Math.Abs(filled - kilopascals) < 1e-9,
            FormattableString.Invariant($"{part} is filled to {filled}")
        );
    }

    /// <summary>
    /// By how much an open part misses its law, 140 Pa here: in full up to a slope of 1e12, and in proportion to its flow above.
    /// </summary>
    [Theory]
    [InlineData(1e8, 140, 140)]
    [InlineData(1e8, -140, 140)]
    [InlineData(1e12, 140, 140)]
    [InlineData(4e12, 140, 35)]
    [InlineData(4e12, -140, 35)]
    public void ErrorIn_AnOpenPart_IsWhatItMisses(double slope, double missed, double expected)
    {
        using NetworkWork<Real> work = Filter(slope, false);
        work.Flow[0] = new(2e-9);
        int up = work.Plan.From[0];
        (work.Pressure[up], work.Pressure[1 - up]) = (new((slope * 2e-9) + missed), new(0));

        Assert.Equal(expected, work.Plan.Links[0].Law.ErrorIn(work, 0, 1e-15), 1e-9);
    }

    /// <summary>A shut part misses its law by what would open it, and not by what shuts it.</summary>
    [Theory]
    [InlineData(300, 300)]
    [InlineData(-300, 0)]
    public void ErrorIn_AShutPart_IsWhatWouldOpenIt(double surplus, double expected)
    {
        using NetworkWork<Real> work = Filter(1e8, true);
        work.Flow[0] = new(0);
        int up = work.Plan.From[0];
        (work.Pressure[up], work.Pressure[1 - up]) = (new(surplus), new(0));

        Assert.Equal(expected, work.Plan.Links[0].Law.ErrorIn(work, 0, 1e-15), 1e-9);
    }

    /// <summary>An injector that gives what it is told misses by what it lacks; one that is shut by nothing.</summary>
    [Theory]
    [InlineData(1e-5, 1e-5, 12e3, 0)]
    [InlineData(1e-5, 1e-5, 8e3, 2e3)]
    [InlineData(1e-5, 0.5e-5, 8e3, 5.5e3)]
    [InlineData(0, 0, 8e3, 0)]
    public void ErrorIn_AnInjector_IsWhatItsCommandLacks(
        double commanded,
        double flow,
        double difference,
        double expected
    )
    {
        // 10 kPa at 1e-5 m3/s; half of that takes a quarter, 2.5 kPa.
        Network network = new Network(
            [Fixed("a", 0), Fixed("b", 0)],
            [new Line("part", "a", "b", new LawPart(new CappedSettings(1e-7, commanded)))]
        ).At(new(Density.FromKilogramsPerCubicMeter(800), DynamicViscosity.FromPascalSeconds(5e-4)));
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        work.Flow[0] = new(flow);
        (work.Pressure[0], work.Pressure[1]) = (new(difference), new(0));

        Assert.Equal(expected, work.Plan.Links[0].Law.ErrorIn(work, 0, 1e-12), 1e-6);
    }

    /// <summary>A pump that is put in the place of another must be like it; the reason is said by what it must be.</summary>
    [Fact]
    public void WhyUnlike_NamesWhatDiffers()
    {
        PumpTableSettings three = Table(OutsideRange.Extend, (0, 500), (50, 450), (100, 300));
        PumpTableSettings two = Table(OutsideRange.Extend, (0, 500), (100, 300));
        PumpTableSettings refusing = Table(OutsideRange.Refuse, (0, 500), (100, 300));
        PumpTableSettings humped = Table(OutsideRange.Extend, (0, 300), (50, 450), (100, 300));
        PumpPowerSettings power = new(500e3, 3e12, 1.5);

        Assert.Null(two.WhyUnlike(three));
        Assert.Null(three.WhyUnlike(three));
        Assert.Equal("have no more than 2 points", three.WhyUnlike(two));
        Assert.Equal("be a power law", two.WhyUnlike(power));
        Assert.StartsWith("treat what lies beyond", refusing.WhyUnlike(two)!, StringComparison.Ordinal);
        Assert.Equal("have a curve that falls throughout", humped.WhyUnlike(three));
        Assert.Null(power.WhyUnlike(new PumpPowerSettings(1, 2, 1.5)));
        Assert.Equal("have the exponent", power.WhyUnlike(new PumpPowerSettings(500e3, 3e12, 1.6)));
        Assert.Equal("be a table", power.WhyUnlike(two));
    }

    /// <summary>A table of fewer pieces fills the rest with its last one, and reads back so.</summary>
    [Fact]
    public void PieceTable_OfFewerPieces_RepeatsTheLast()
    {
        Piece[] pieces = [new(1, 2, 3, 4, 5), new(6, 7, 8, 9, 10)];
        double[] settings = new double[20];

        PieceTable.Write(pieces, settings);

        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 6, 7, 8, 9, 10, 6, 7, 8, 9, 10], settings);
        Assert.Equal([pieces[0], pieces[1], pieces[1], pieces[1]], PieceTable.Read(settings));
        PieceTable.Write(pieces, new double[10]);
        Assert.Throws<ArgumentOutOfRangeException>(() => PieceTable.Write(pieces, new double[9]));
    }

    /// <summary>The cubic of the piece that a place lies in; the first one before it, the last one after.</summary>
    [Theory]
    [InlineData(0.5, 2 - (3 * 0.5) + (4 * 0.25) - (5 * 0.125), 3 - (4 * 2 * 0.5) + (5 * 3 * 0.25))]
    [InlineData(1, 2, 3)]
    [InlineData(3, 2 + 6 + 16 + 40, 3 + 16 + 60)]
    [InlineData(6, 7, 8)]
    [InlineData(8, 7 + 16 + 36 + 80, 8 + 36 + 120)]
    public void PieceTable_IsTheCubicOfItsPiece(double x, double value, double slope)
    {
        PieceTable<Real> table = default;
        table.Load([new(1, 2, 3, 4, 5), new(6, 7, 8, 9, 10)]);

        Dual<Real> found = table.At(Dual<Real>.Variable(new(x)));

        Close.Within(1e-12, value, found.Number.Value);
        Close.Within(1e-12, slope, found.Rate.Value);
        Assert.Equal((1.0, 2.0), (table.Begin.Value, table.AtBegin.Value));
        Assert.Equal((6.0, 7.0), (table.End.Value, table.AtEnd.Value));
    }

    private static PumpTableSettings Table(OutsideRange outside, params (double Flow, double Rise)[] points) =>
        (PumpTableSettings)Straight(outside, points).Law;

    /// <summary>One part whose loss grows with flow alone, between two nodes of fixed pressure.</summary>
    private static NetworkWork<Real> Filter(double slope, bool oneWay)
    {
        SquareSettings law = new() { LinearPerViscosity = slope / 5e-4, OneWay = oneWay };
        return new Network([Fixed("a", 0), Fixed("b", 0)], [new Line("part", "a", "b", new LawPart(law))])
            .At(new(Density.FromKilogramsPerCubicMeter(800), DynamicViscosity.FromPascalSeconds(5e-4)))
            .Plan.Rent<Real>();
    }
}
