using System.Reflection;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// What is asked of parts, and what each answers: a part that is new, or a question that is new, has no answer here and
/// fails until somebody has thought of it.
/// </summary>
public sealed class PartQuestionsTests
{
    private static readonly Dictionary<string, Func<FlowPart, string>> Questions = new()
    {
        ["Law"] = p => p.Law.GetType().Name.Split('`')[0],
        ["Needs"] = p => p.Needs.ToString(),
        ["Reading"] = p => p.Reading()?.GetType().Name ?? "-",
        ["IsPassage"] = p => Word(p.IsPassage),
        ["IsPump"] = p => Word(p.IsPump),
        ["ShutsIn"] = p => Word(p.ShutsIn),
        ["ReturnsSurplus"] = p => Word(p.ReturnsSurplus),
        ["LeakPlaces"] = p => p.LeakPlaces.ToString(),
        ["VolumeSi"] = p => Word(p.VolumeSi > 0),
        ["Estimated"] = p => p.Estimated.Length.ToString(System.Globalization.CultureInfo.InvariantCulture),
        ["WhyNoLine"] = p => Word(p.WhyNoLine is not null),
        ["KindInSystem"] = p => Word(!p.KindInSystem.IsEmpty),
        ["FindingsAt"] = p => string.Join(" ", Codes(p)),
    };

    /// <summary>Answers in the order of the questions; the words of a part's page say the same.</summary>
    private static readonly Dictionary<string, (Func<FlowPart> Part, string Answers)> Parts = new()
    {
        ["Hose"] = (
            () => Workshop.Hose("hose", 3, 8),
            "PipeSettings | None | - | yes | no | no | no | None | yes | 0 | no | no | HoseVelocityHigh"
        ),
        ["FittedHose"] = (
            PlumbingParts.Fitted,
            "PipeSettings | None | - | yes | no | no | no | None | yes | 1 | no | no | HoseVelocityHigh"
        ),
        ["Fitting"] = (
            () => PlumbingParts.Elbow(FuelMath.Fitting.LossBasis.Estimate),
            "SquareSettings | None | - | yes | no | no | no | None | no | 1 | no | no | "
        ),
        ["Filter"] = (
            () => Workshop.Filter().WithCollapseLimit(UnitsNet.Pressure.FromBars(1)),
            "SquareSettings | None | - | yes | no | no | no | None | no | 0 | no | no | FilterBeyondTest FilterCollapse"
        ),
        ["Strainer"] = (
            () => PlumbingParts.Strainer(),
            "SquareSettings | None | - | yes | no | no | no | None | no | 0 | no | no | FilterBeyondTest"
        ),
        ["Jet"] = (
            () => PlumbingParts.Jet(),
            "SquareSettings | None | - | yes | no | no | no | None | no | 0 | no | no | "
        ),
        ["LossTable"] = (
            PlumbingParts.LossTable,
            "LossTableSettings | None | - | yes | no | no | no | None | no | 0 | no | no | "
        ),
        ["CustomPart`1"] = (
            PlumbingParts.Own,
            "CustomSettings | None | - | yes | no | no | no | None | no | 0 | no | no | "
        ),
        ["Pump"] = (
            () => Workshop.Pump(1),
            "PumpTableSettings | PumpVoltage | PumpReading | no | yes | yes | no | CheckValve | no | 0 | no | no | PumpStalled"
        ),
        ["StoppedPump"] = (
            () => new StoppedPump(Workshop.Pump(1)),
            "StoppedSettings | None | - | no | yes | yes | no | CheckValve | no | 0 | no | no | "
        ),
        ["ReliefValve"] = (
            () => PlumbingRig.Relief(5),
            "SquareSettings | None | - | no | no | yes | yes | ReliefSeat | no | 0 | no | no | ReliefOpen"
        ),
        ["BypassRegulator"] = (
            () => Workshop.Regulator(RegulatorReference.Manifold, 3),
            "RegulatorSettings | ManifoldPressure | ReferenceReading | no | no | yes | yes | BypassSeat, Diaphragm | no | 0 | no | no | RegulatorShut RegulatorFullyOpen"
        ),
        ["ReducingRegulator"] = (
            () => PlumbingRig.Reducing(RegulatorReference.Tank),
            "RegulatorSettings | TankPressure | ReferenceReading | no | no | no | no | Diaphragm | no | 0 | no | no | RegulatorStarved"
        ),
        ["Pipe"] = (
            () => PlainParts.Pipe,
            "PipeSettings | None | - | yes | no | no | no | None | yes | 0 | no | no | "
        ),
        ["CurvedPipe"] = (
            () => PlainParts.CurvedPipe,
            "CurvedSettings | None | - | yes | no | no | no | None | yes | 0 | no | no | "
        ),
        ["PlainFitting"] = (
            () => PlainParts.Fitting,
            "SquareSettings | None | - | yes | no | no | no | None | no | 0 | no | no | "
        ),
        ["PlainFilter"] = (
            () => PlainParts.Filter,
            "SquareSettings | None | - | yes | no | no | no | None | no | 0 | no | no | "
        ),
        ["CheckValve"] = (
            () => PlainParts.CheckValve,
            "SquareSettings | None | - | no | no | yes | no | CheckValve | no | 0 | no | no | "
        ),
        ["PlainPump"] = (
            () => PlainParts.Pump,
            "PumpTableSettings | None | - | no | yes | yes | no | CheckValve | no | 0 | no | yes | "
        ),
        ["PlainRegulator"] = (
            () => PlainParts.Bypass,
            "RegulatorSettings | None | - | no | no | yes | no | BypassSeat, Diaphragm | no | 0 | no | yes | "
        ),
        ["Nozzle"] = (
            () => PlainParts.Nozzle,
            "SquareSettings | None | - | no | no | no | no | None | no | 0 | no | no | "
        ),
        ["InjectorDraw"] = (
            () => PlainParts.Draw,
            "CappedSettings | CommandedFlow | CommandReading | no | no | yes | no | None | no | 0 | no | yes | "
        ),
        ["SeatDraw"] = (
            () => new SeatDraw(Workshop.Four().Stages[0].Seats[0]),
            "CappedSettings | CommandedFlow | DrawReading | no | no | yes | no | None | no | 0 | no | no | "
        ),
    };

    public static TheoryData<string> Names => [.. Parts.Keys];

    [Fact]
    public void EveryQuestion_IsAskedHere() =>
        Assert.Equal(
            typeof(FlowPart)
                .GetMembers(BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                .Where(m => m is PropertyInfo or MethodInfo { IsSpecialName: false })
                .Select(m => m.Name)
                .Order(StringComparer.Ordinal),
            Questions.Keys.Order(StringComparer.Ordinal)
        );

    [Fact]
    public void EveryPart_Answers() =>
        Assert.Equal(
            typeof(FlowPart)
                .Assembly.GetTypes()
                .Where(t => t.IsSubclassOf(typeof(FlowPart)) && !t.IsAbstract)
                .Select(t => t.Name)
                .Order(StringComparer.Ordinal),
            Parts.Keys.Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void Part_Answers(string name)
    {
        (Func<FlowPart> make, string answers) = Parts[name];
        FlowPart part = make();

        Assert.Equal(name, part.GetType().Name);
        Assert.Equal(answers, string.Join(" | ", Questions.Values.Select(ask => ask(part))));
    }

    public static TheoryData<string, string> NamesTimesNeeds
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (string part in Parts.Keys.Where(p => p != nameof(SeatDraw)))
            {
                foreach (PartNeeds need in Enum.GetValues<PartNeeds>().Where(n => n != PartNeeds.None))
                {
                    all.Add(part, need.ToString());
                }
            }

            return all;
        }
    }

    /// <summary>
    /// A part between two junctions, everything given but one condition: refused with the line and that condition where it is
    /// needed, and not asked for where it is not.
    /// </summary>
    [Theory]
    [MemberData(nameof(NamesTimesNeeds))]
    public void Part_WithoutACondition_IsRefusedByLineWhereItIsNeeded(string name, string without)
    {
        FlowPart part = Parts[name].Part();
        PartNeeds missing = Enum.Parse<PartNeeds>(without);
        if (part.WhyNoLine is not null)
        {
            return;
        }

        NetworkConditions at = new(
            Density.FromKilogramsPerCubicMeter(745),
            DynamicViscosity.FromMillipascalSeconds(0.5)
        );
        at = missing == PartNeeds.PumpVoltage ? at : at.WithPumpVoltage(ElectricPotential.FromVolts(12));
        at = missing == PartNeeds.ManifoldPressure ? at : at.WithManifold(default);
        at = missing == PartNeeds.TankPressure ? at : at.WithTank(default);
        at =
            missing == PartNeeds.CommandedFlow || !part.Needs.HasFlag(PartNeeds.CommandedFlow)
                ? at
                : at.WithCommandedFlow("asked", VolumeFlow.FromLitersPerHour(10));
        string end = part.Law.NeedsSpace ? "end" : "behind";
        Network network = new(
            [
                Network.Node.FixedPressure("begin", new(Pressure.FromBars(3)), Length.Zero),
                Network.Node.Junction("ahead", Length.Zero),
                Network.Node.Junction("behind", Length.Zero),
                Network.Node.FixedPressure("end", default, Length.Zero),
            ],
            [
                new Line("in", "begin", "ahead", PlainParts.Fitting),
                new Line("asked", "ahead", end, part),
                new Line("out", "behind", "end", PlainParts.Fitting),
            ]
        );

        Exception? refusal = Record.Exception(() => network.At(at));

        string words = missing switch
        {
            PartNeeds.PumpVoltage => "the voltage at its terminals",
            PartNeeds.ManifoldPressure => "the pressure in the manifold",
            PartNeeds.TankPressure => "the pressure in its tank",
            _ => "the commanded flow",
        };
        Assert.Equal(
            part.Needs.HasFlag(missing),
            refusal is ArgumentException { Message: { } text }
                && text.StartsWith($"Must give {words}, which the part of line 'asked' needs", StringComparison.Ordinal)
        );
        Assert.True(refusal is null || part.Needs.HasFlag(missing), refusal?.Message);
    }

    private static string Word(bool yes) => yes ? "yes" : "no";

    /// <summary>What it may say of any condition, at 1000 L/h.</summary>
    private static IEnumerable<FindingCode> Codes(FlowPart part) =>
        Enum.GetValues<Network.LineCondition>()
            .SelectMany(c =>
                part.FindingsAt(
                    new()
                    {
                        Line = "line",
                        Condition = c,
                        Flow = 1 / 3600.0,
                        Inlet = 3e5,
                        Outlet = 0,
                        NothingDrawn = false,
                        Density = 745,
                        Viscosity = 5e-4,
                        PumpVolts = 12,
                        IsSuction = false,
                        GreatestVelocity = 4,
                        VelocitySource = Workshop.Invented,
                    }
                )
            )
            .Select(f => f.Code)
            .Distinct()
            .Order();
}
