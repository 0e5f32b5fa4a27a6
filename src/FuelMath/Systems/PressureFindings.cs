namespace FuelMath;

/// <summary>Compares the pressure across the injectors with the controller's belief, and finds why it differs.</summary>
internal sealed class PressureFindings(SolvedSystem solved)
{
    /// <summary>The deficit that is a danger. Source: [Common-practice] no single work.</summary>
    private const double MuchLess = -0.15;

    private readonly double limit = solved.System.Limits.PressureDeviation.InSi();

    internal void Find(InjectorStage stage)
    {
        double discharge = stage.DischargeGaugeSi(solved.Point);
        if (stage.Belief is not { } belief || belief.ToldSi(discharge) is not { } told)
        {
            // Nobody said what the controller believes, or it measures the rail, so that no belief can be wrong.
            return;
        }

        SystemState.InjectorResult[] stands = [.. solved.Parts.Injectors.Where(i => i.Stage == stage.Name)];
        if (stands.Length == 0)
        {
            return;
        }

        SystemState.InjectorResult worst = Worst(stands, told);
        if (IsNear(worst, told))
        {
            return;
        }

        // The same pressure entered, with the other reference.
        double entered = belief.DifferentialPressure.InSi();
        bool isToldFixed = belief.RailReference == RailPressure.Reference.Fixed;
        double other = isToldFixed ? entered : entered - discharge;
        if (discharge == 0 || !IsOtherReference(worst, isToldFixed, other))
        {
            NotAsTold(worst, told);
            return;
        }

        double off = Off(worst, told);
        string real = isToldFixed ? "follows the manifold" : "is fixed";
        solved.Add(
            FindingCode.RailReferenceNotAsTold,
            off < MuchLess ? Severity.Danger : Severity.Warning,
            stage.Name,
            $"The rail of stage '{stage.Name}' {real}, and the controller was told that it {(isToldFixed ? "is fixed" : "follows the manifold")}",
            Value(worst, told),
            Shown.Percent(limit).As(n => $"within {n}"),
            $"Tell the controller that the rail {real}, or change the regulator's reference: {(off < 0 ? "less" : "more")} fuel passes here at the same pulse width."
        );
        SystemState.InjectorResult still = Worst(stands, other);
        if (other > 0 && !IsNear(still, other))
        {
            NotAsTold(still, other);
        }
    }

    /// <summary>The injector farthest from what was told; the lowest where that is a danger, however much others have.</summary>
    private static SystemState.InjectorResult Worst(SystemState.InjectorResult[] stands, double told)
    {
        SystemState.InjectorResult lowest = stands.MinBy(i => i.DifferentialPressure.InSi())!;
        return Off(lowest, told) < MuchLess
            ? lowest
            : stands.MaxBy(i => Math.Abs(i.DifferentialPressure.InSi() - told))!;
    }

    /// <summary>By the regulators where there are any; else by whether the other reference explains the pressure.</summary>
    private bool IsOtherReference(SystemState.InjectorResult worst, bool isToldFixed, double other)
    {
        RegulatorReference[] references =
        [
            .. solved.System.Network.Lines.Select(l => l.Part).OfType<IRegulator>().Select(r => r.Reference),
        ];
        return references.Length > 0
            ? Array.TrueForAll(references, r => (r == RegulatorReference.Manifold) == isToldFixed)
            : other > 0 && IsNear(worst, other);
    }

    private void NotAsTold(SystemState.InjectorResult worst, double told)
    {
        double off = Off(worst, told);
        solved.Add(
            FindingCode.PressureNotAsTold,
            off < MuchLess ? Severity.Danger : Severity.Warning,
            worst.Seat.Node,
            $"Injector differential pressure at '{worst.Seat.Node}' is not what the controller was told",
            Value(worst, told),
            Shown.Percent(limit).As(n => $"within {n}"),
            off < 0
                ? "Less fuel passes at the same pulse width: find the pressure loss, or give the controller a measured pressure."
                : "More fuel passes at the same pulse width: find what lifts the pressure, or give the controller a measured pressure."
        );
    }

    private static Shown Value(SystemState.InjectorResult worst, double told)
    {
        (double off, string real) = (Off(worst, told), Show.Bar(worst.DifferentialPressure.InSi()));
        return Shown
            .Percent(off)
            .As(n =>
                told > 0
                    ? $"{real}, {n} {(off < 0 ? "below" : "above")} {Show.Bar(told)}"
                    : $"{real}, where the controller reckons with none"
            );
    }

    private bool IsNear(SystemState.InjectorResult worst, double told) =>
        told > 0 && Math.Abs(Off(worst, told)) <= limit;

    /// <summary>Relative deviation of the pressure from the believed one; the pressure itself where the controller believes none.</summary>
    private static double Off(SystemState.InjectorResult worst, double told) =>
        told > 0 ? (worst.DifferentialPressure.InSi() / told) - 1 : 1;
}
