using FuelMath.ShopTests;
using FuelMath.Tests.Documents;
using FuelMath.Tests.Systems;

namespace FuelMath.Tests.Tightness;

/// <summary>Whatever leaks, no order of isolating steps clears it: every place, every step, every gauge that fits.</summary>
public sealed class LeakSuspectsMatrixTests
{
    public static TheoryData<string> Names => new() { "rig", "without return", "time-trial-car", "training-stand" };

    [Theory]
    [MemberData(nameof(Names))]
    public void After_AnySteps_KeepsWhatLeaks(string name)
    {
        FuelSystem system = name switch
        {
            "rig" => Workshop.Four(),
            "without return" => PlumbingRig.WithoutReturn(),
            _ => SystemDocument.Read(TestFiles.System(name)),
        };
        LeakSuspects all = LeakSuspects.Of(system);
        foreach (LeakSuspects.Suspect leaking in all.All)
        {
            Follow(system, all, leaking, 3);
        }
    }

    /// <summary>Every step on what is left, with every outcome that this leak can have.</summary>
    private static void Follow(FuelSystem system, LeakSuspects left, LeakSuspects.Suspect leaking, int depth)
    {
        Assert.Contains(left.All, s => s.ToString() == leaking.ToString());
        if (depth == 0 || left.IsOneKind)
        {
            return;
        }

        foreach (LeakSuspects.SuspectKind step in left.All.Select(s => s.Kind).Distinct())
        {
            foreach (LeakSuspects.Outcome outcome in Outcomes(system, leaking, step))
            {
                Follow(system, left.After(step, outcome), leaking, depth - 1);
            }
        }
    }

    /// <summary>
    /// What the gauge can do, from the plan alone: a step holds what it shuts off; a clamp after the pump sits somewhere on the
    /// parts that begin at the pump's outlet, so that these may leak on either side of it or on both.
    /// </summary>
    private static IEnumerable<LeakSuspects.Outcome> Outcomes(
        FuelSystem system,
        LeakSuspects.Suspect leaking,
        LeakSuspects.SuspectKind step
    )
    {
        Line? line = system.Network.Lines.FirstOrDefault(l => l.Name == leaking.Part);
        bool clamp = step == LeakSuspects.SuspectKind.CheckValve;
        string[] outlets = [.. system.Network.Lines.Where(l => l.Part is Pump).Select(l => l.To)];
        if (leaking.Kind == step || (clamp && line?.Part is Pump))
        {
            return [LeakSuspects.Outcome.StandsStill];
        }

        return clamp && line is not null && (outlets.Contains(line.From) || outlets.Contains(line.To))
            ?
            [
                LeakSuspects.Outcome.StandsStill,
                LeakSuspects.Outcome.FallsAsBefore,
                LeakSuspects.Outcome.FallsMoreSlowly,
            ]
            : [LeakSuspects.Outcome.FallsAsBefore];
    }
}
