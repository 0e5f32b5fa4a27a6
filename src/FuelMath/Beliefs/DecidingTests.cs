using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Scalars;

namespace FuelMath.Beliefs;

/// <summary>What would tell two causes apart: measurements that settle one of them, and changes to which they react differently.</summary>
internal static class DecidingTests
{
    /// <summary>The pressure step as a share of the least pressure believed.</summary>
    private const double Step = 1.0 / 3;

    /// <summary>Standard uncertainties of one observation that make a test worth while.</summary>
    private const double Apart = 2;

    internal static double LogFactor(CauseModel model, double[] parameters, int reading) =>
        model.At(Array.ConvertAll(parameters, p => new Real(p)), reading).Value;

    internal static ImmutableArray<DecidingTest> Of(
        CauseModel model,
        double[] parameters,
        CauseModel other,
        double[] otherParameters,
        ImmutableArray<MixtureObservation> observations
    )
    {
        var tests = new List<DecidingTest>();
        if (IsPressure(model.Cause) != IsPressure(other.Cause))
        {
            tests.Add(
                Measured(
                    DecidingTestKind.Gauge,
                    "Put a gauge on the rail and read it against manifold pressure at each point: the difference is the one believed, or it is not."
                )
            );
        }

        if (IsInjector(model.Cause) || IsInjector(other.Cause))
        {
            tests.Add(
                Measured(
                    DecidingTestKind.Bench,
                    "Measure static flow and dead time of the injectors on a bench: they are those believed, or they are not."
                )
            );
        }

        double rise = Step * model.LeastPressure;
        DecidingTest?[] changes =
        [
            Changed(
                DecidingTestKind.PressureStep,
                $"Raise the base pressure by {Show.Bar(rise)}, within what every part allows, tell the controller, and repeat the observation",
                rise,
                1
            ),
            Changed(
                DecidingTestKind.TwicePulses,
                "Give the same fuel in twice as many pulses, where the controller can, and repeat the observation",
                0,
                2
            ),
        ];
        tests.AddRange(changes.OfType<DecidingTest>().OrderByDescending(t => t.Separation!.Value.InSi()));
        return [.. tests];

        DecidingTest? Changed(DecidingTestKind kind, string what, double pressureRise, double pulses)
        {
            MixtureObservation[] after = [.. observations.Select(o => o.After(pressureRise, pulses))];
            (CauseModel one, CauseModel two) = (model.With(after), other.With(after));
            if (!one.IsDefined(parameters) || !two.IsDefined(otherParameters))
            {
                return null;
            }

            (int best, double apart, double ifThis, double ifOther) = (-1, 0, 0, 0);
            for (int i = 0; i < after.Length; i++)
            {
                (double a, double b) = (LogFactor(one, parameters, i), LogFactor(two, otherParameters, i));
                double separation = Math.Abs(a - b) / after[i].UncertaintySi;
                if (separation > apart)
                {
                    (best, apart, ifThis, ifOther) = (i, separation, Math.Exp(a), Math.Exp(b));
                }
            }

            return apart < Apart
                ? null
                : new(
                    kind,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{what} '{after[best].Name}': the factor becomes {ifThis:0.000} by {CauseWords.Name(model.Cause)}, {ifOther:0.000} by {CauseWords.Name(other.Cause)}."
                    ),
                    after[best].Name,
                    SiUnits.Ratio(ifThis),
                    SiUnits.Ratio(ifOther),
                    SiUnits.Ratio(apart)
                );
        }
    }

    private static DecidingTest Measured(DecidingTestKind kind, string what) => new(kind, what, null, null, null, null);

    private static bool IsPressure(BeliefCause cause) => cause is BeliefCause.Pressure or BeliefCause.PressureReference;

    private static bool IsInjector(BeliefCause cause) =>
        cause is BeliefCause.Flow or BeliefCause.DeadTime or BeliefCause.FlowAndDeadTime;
}
