using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>
/// Tests that distinguish two causes: measurements that decide one of them, and changes to which they react
/// differently.
/// </summary>
internal sealed class DecidingTests
{
    /// <summary>The pressure step as a fraction of the least pressure presumed.</summary>
    private const double Step = 1.0 / 3;

    /// <summary>The largest reasonable number of repeats of an observation.</summary>
    private const double MostRepeats = 100;

    /// <summary>The measurements that decide a cause by themselves.</summary>
    private static readonly ImmutableArray<(MixtureDiagnosis.DecidingTestKind Kind, string What)> Measurements =
    [
        (
            MixtureDiagnosis.DecidingTestKind.Gauge,
            "Put a gauge on the rail and read it against manifold pressure at each point: the difference is the one presumed, or it is not."
        ),
        (
            MixtureDiagnosis.DecidingTestKind.Bench,
            "Measure static flow, dead time and leakage of the injectors on a bench: they are those presumed, or they are not."
        ),
        (
            MixtureDiagnosis.DecidingTestKind.FuelSample,
            "Take a sample of the fuel and measure its density and its share of alcohol: they are those presumed, or they are not."
        ),
        (
            MixtureDiagnosis.DecidingTestKind.AnotherPoint,
            "Observe the manifold pressure of one point at the speed of another: an air model that errs over load or over speed alone changes with one of the two only."
        ),
    ];

    private readonly FittedInjectors set;
    private readonly CauseModel model;
    private readonly double[] parameters;
    private readonly CauseModel other;
    private readonly double[] otherParameters;

    internal DecidingTests(
        FittedInjectors set,
        CauseModel model,
        double[] parameters,
        CauseModel other,
        double[] otherParameters
    )
    {
        (this.set, this.model, this.parameters) = (set, model, parameters);
        (this.other, this.otherParameters) = (other, otherParameters);
    }

    /// <summary>The tests, measurements first, then by separation.</summary>
    /// <param name="separation">The present separation, in standard deviations.</param>
    internal ImmutableArray<MixtureDiagnosis.DecidingTest> Of(double separation)
    {
        var tests = new List<MixtureDiagnosis.DecidingTest>();
        foreach ((MixtureDiagnosis.DecidingTestKind kind, string what) in Measurements)
        {
            if (model.Kind.DecidedBy == kind || other.Kind.DecidedBy == kind)
            {
                tests.Add(Measured(kind, what));
            }
        }

        SeenMixture[] seen = model.Readings;
        ObservedState[] states = [.. seen.Select(r => r.State).Distinct()];
        double rise = Step * model.LeastPressure;
        MixtureDiagnosis.DecidingTest?[] changes =
        [
            Changed(
                MixtureDiagnosis.DecidingTestKind.PressureStep,
                $"Raise the base pressure by {Show.Bar(rise)}, within what every part allows, tell the controller, and repeat the observation",
                Raised(states, rise),
                false
            ),
            Changed(
                MixtureDiagnosis.DecidingTestKind.TwicePulses,
                "Give the same fuel in twice as many pulses, where the controller can, and repeat the observation",
                [.. states.SelectMany(s => s.After(0, 2).Readings())],
                false
            ),
            model.Kind.IsOfOneChamber || other.Kind.IsOfOneChamber
                ? Changed(
                    MixtureDiagnosis.DecidingTestKind.ChamberReading,
                    "Read lambda in the exhaust port of a single chamber",
                    [.. states.SelectMany(Unread)],
                    true
                )
                : null,
        ];
        tests.AddRange(
            changes.OfType<MixtureDiagnosis.DecidingTest>().OrderByDescending(t => t.Separation!.Value.InSi())
        );
        if (separation > 0 && Math.Pow(CauseRanking.Apart / separation, 2) is var repeats and > 1 and <= MostRepeats)
        {
            tests.Add(
                Measured(
                    MixtureDiagnosis.DecidingTestKind.MoreReadings,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Repeat each observation {Math.Ceiling(repeats):0} times and take the means, if the scatter is random."
                    )
                )
            );
        }

        return [.. tests];
    }

    /// <summary>
    /// The readings with a higher pressure that is also entered; empty where the data of the believed injector do not
    /// reach it.
    /// </summary>
    private static SeenMixture[] Raised(ObservedState[] states, double rise)
    {
        try
        {
            return [.. states.SelectMany(s => s.After(rise, 1).Readings())];
        }
        catch (OutsideTableException)
        {
            return [];
        }
    }

    /// <summary>Readings of the unread chambers, with the least uncertainty stated there.</summary>
    private IEnumerable<SeenMixture> Unread(ObservedState state)
    {
        double best = model.Readings.Where(r => r.State == state).Min(r => r.Uncertainty);
        return Enumerable
            .Range(0, set.ChamberCount)
            .Where(c =>
                state.Observation.Banks.Any(b => b.Bank == set.Banks[c])
                && state.Observation.Chambers.All(r => r.Chamber != c + 1)
            )
            .Select(c => state.OfChamber(c, 1, best));
    }

    private MixtureDiagnosis.DecidingTest? Changed(
        MixtureDiagnosis.DecidingTestKind kind,
        string what,
        SeenMixture[] after,
        bool ofChamber
    )
    {
        if (after.Length == 0)
        {
            return null;
        }

        (CauseModel one, CauseModel two) = (model.With(after), other.With(after));
        if (!one.IsDefined(parameters) || !two.IsDefined(otherParameters))
        {
            return null;
        }

        // Nothing is predicted beyond the data of an injector.
        if (one.Beyond(parameters) is not null || two.Beyond(otherParameters) is not null)
        {
            return null;
        }

        (int best, double apart, double ifThis, double ifOther) = (-1, 0, 0, 0);
        for (int i = 0; i < after.Length; i++)
        {
            (double a, double b) = (one.At(parameters, i), two.At(otherParameters, i));
            double separation = Math.Abs(a - b) / after[i].Uncertainty;
            // Among points with equal separation the first is used.
            if (separation > apart * (1 + Guard.EdgeTolerance))
            {
                (best, apart, ifThis, ifOther) = (i, separation, Math.Exp(a), Math.Exp(b));
            }
        }

        if (apart < CauseRanking.Apart)
        {
            return null;
        }

        string point = after[best].State.Observation.Name;
        string place = ofChamber ? $", {after[best].Place}, at" : "";
        return new(
            kind,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what}{place} '{point}': lambda becomes {ifThis:0.000} of the one aimed at by {model.Name}, {ifOther:0.000} by {other.Name}."
            ),
            point,
            ofChamber ? after[best].Chambers[0] + 1 : null,
            SiUnits.Ratio(ifThis),
            SiUnits.Ratio(ifOther),
            SiUnits.Ratio(apart)
        );
    }

    private static MixtureDiagnosis.DecidingTest Measured(MixtureDiagnosis.DecidingTestKind kind, string what) =>
        new(kind, what, null, null, null, null, null);
}
