using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A checked line plan in a system: its losses, its document, and the findings of its joints.</summary>
public sealed class LinePlanInSystemTests
{
    private static readonly OperatingPoint Point = Workshop.Point(5000, 100, Workshop.Hold(0.9));

    /// <summary>
    /// A feed line of two bores between two adapters; its second hose ends in a 37 degree nut, which an O-ring boss of the same
    /// dash does not fit: it does not seal.
    /// </summary>
    private static LinePlan Plan(bool seals)
    {
        FittingEnd flare = FittingEnd.Flare37(6, FittingEnd.EndGender.Male);
        return new(
            "feed line",
            [
                new LinePlan.StartPort("filter", FittingEnd.Flare37(6, FittingEnd.EndGender.Male)),
                new LinePlan.HosePiece(HoseOf("wide hose", 2, 8.7)),
                new LinePlan.AdapterPiece(new Adapter("union", flare, flare), Loss("union", 7, 0.4)),
                new LinePlan.HosePiece(HoseOf("narrow hose", 1, 7)),
                new LinePlan.EndPort("rail", seals ? flare : FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female)),
            ]
        );
    }

    private static FuelSystem Car(bool seals)
    {
        Line[] feed = [.. Plan(seals).ToLines("filter outlet", "rail start")];
        return PlumbingRig.With([.. PlumbingRig.Usual().Where(l => l.Name != "feed"), .. feed]);
    }

    [Fact]
    public void Solve_LosesWhatThePlanSays()
    {
        FuelSystem car = Car(seals: true);
        SystemState state = car.Solve(Point);
        double lost = Plan(true)
            .LossAt(state.FlowThrough("feed line 1"), car.Fuel.DensityAt(Point.Fuel), car.Fuel.ViscosityAt(Point.Fuel))
            .Pascals;

        Assert.Equal(3, car.Network.Lines.Count(l => l.Name.StartsWith("feed line", StringComparison.Ordinal)));
        Close.WithinOf(lost, 1e-6, lost, state.PressureAt("filter outlet").Si - state.PressureAt("rail start").Si);
    }

    /// <summary>From a file to a verdict: the joint is read, is found not to seal, and the engine is not to be run.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void ReadThenSolve_AJointThatDoesNotSeal_IsADanger(bool seals)
    {
        string text = SystemDocument.Write(Car(seals));
        FuelSystem read = SystemDocument.Read(text);
        SystemState state = read.Solve(Point);
        Finding[] joints = [.. state.Findings.Where(f => f.Code == FindingCode.JointDoesNotSeal)];

        Assert.Equal(text, SystemDocument.Write(read));
        Assert.Equal(seals ? 0 : 1, joints.Length);
        Assert.All(joints, f => Assert.Equal(Severity.Danger, f.Severity));
        Assert.All(joints, f => Assert.Equal("'narrow hose' to 'rail'", f.Part));
        if (!seals)
        {
            Assert.Equal(Verdict.Outcome.DoNotRun, state.Verdict.Kind);
            Assert.Contains(new SystemAssessment(read, [Point]).Findings, f => f.Code == FindingCode.JointDoesNotSeal);
        }
    }

    /// <summary>The whole line as one keeps its joints, too.</summary>
    [Fact]
    public void ToLine_KeepsTheFindingsOfItsJoints()
    {
        LinePlan plan = new(
            "feed",
            [
                new LinePlan.StartPort("filter", FittingEnd.Flare37(6, FittingEnd.EndGender.Male)),
                new LinePlan.HosePiece(HoseOf("hose", 3, 8.7)),
                new LinePlan.EndPort("rail", FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female)),
            ]
        );
        FuelSystem car = PlumbingRig.With([
            .. PlumbingRig.Usual().Where(l => l.Name != "feed"),
            plan.ToLine("filter outlet", "rail start"),
        ]);

        Assert.Equal(plan.Check().Select(f => f.What).Order(), Joints(car.Solve(Point)).Order());
        Assert.Equal(Joints(car.Solve(Point)), Joints(SystemDocument.Read(SystemDocument.Write(car)).Solve(Point)));

        static IEnumerable<string> Joints(SystemState state) =>
            state.Findings.Where(f => f.Part.Contains(" to ", StringComparison.Ordinal)).Select(f => f.What);
    }

    private static HoseAssembly HoseOf(string name, double meters, double millimeters)
    {
        FittingEnd nut = FittingEnd.Flare37(6, FittingEnd.EndGender.Female);
        return new(
            name,
            new HoseStock("braided hose", Length.FromMillimeters(millimeters), Length.FromMicrometers(1.5)),
            Length.FromMeters(meters),
            new(nut, Loss(name + ", first end", millimeters - 1, 0.3), Length.FromMillimeters(20)),
            new(nut, Loss(name + ", second end", millimeters - 1, 0.3), Length.FromMillimeters(20)),
            Workshop.Invented
        );
    }

    private static Fitting Loss(string name, double millimeters, double coefficient) =>
        new(
            name,
            Length.FromMillimeters(millimeters),
            Ratio.FromDecimalFractions(coefficient),
            Fitting.LossBasis.Supplied,
            Workshop.Invented
        );
}
