using FuelMath.Formulas;
using FuelMath.Statistics;

namespace FuelMath;

/// <summary>The prediction of every reading with one cause.</summary>
/// <remarks>
/// Parameters of order one: the logarithm of a ratio, a dead time in ms, a pressure relative to the least one presumed,
/// a fraction of the manifold pressure, a relative departure of flow, a leak relative to the static flow.
/// </remarks>
internal sealed class CauseModel : IFitModel
{
    private const double MostFlow = 10;
    private const double MostLeak = 1;

    /// <summary>A dead time that is less than this below zero is zero, s.</summary>
    private const double Rounding = 1e-15;

    private readonly FittedInjectors set;
    private readonly SeenMixture[] readings;
    private readonly (double Low, double High) load;
    private readonly (double Low, double High) speed;
    private readonly double leastDeadTime;

    /// <summary>The prediction of readings that do not include the chamber; NaN for those that do.</summary>
    private readonly double[] unmoved;

    internal CauseModel(FittedInjectors set, MixtureDiagnosis.Cause cause, int chamber, SeenMixture[] readings)
    {
        (this.set, Cause, Chamber, this.readings) = (set, cause, chamber, readings);
        load = (readings.Min(r => r.State.Manifold), readings.Max(r => r.State.Manifold));
        speed = (readings.Min(r => r.State.Speed), readings.Max(r => r.State.Speed));
        LeastPressure = readings.Min(r => r.State.Pressures.Min());
        leastDeadTime = readings.Min(r => r.State.Pressures.Select((p, s) => LeastDeadTime(r, s, p)).Min());
        unmoved = Unmoved();
        if (chamber >= 0)
        {
            Injector own = set.Stages[0].Fitted[chamber];
            StaticFlow = own.Rating.MassFlow(new Real(LeastPressure), new Real(readings[0].State.Density)).Value;
        }
    }

    private CauseModel(CauseModel other, SeenMixture[] readings)
    {
        (set, Cause, Chamber, this.readings) = (other.set, other.Cause, other.Chamber, readings);
        (load, speed, LeastPressure, StaticFlow) = (other.load, other.speed, other.LeastPressure, other.StaticFlow);
        leastDeadTime = other.leastDeadTime;
        unmoved = Unmoved();
    }

    internal MixtureDiagnosis.Cause Cause { get; }

    /// <summary>The chamber, counted from 0; -1 for a cause of all.</summary>
    internal int Chamber { get; }

    /// <summary>The least pressure presumed, Pa: the unit of a pressure error, and what a leak is given at.</summary>
    internal double LeastPressure { get; }

    /// <summary>The static flow of the chamber's first injector at that pressure, kg/s: the unit of a leak.</summary>
    internal double StaticFlow { get; }

    internal SeenMixture[] Readings => readings;

    /// <inheritdoc />
    public int ParameterCount => CauseKinds.Parameters(Cause);

    /// <inheritdoc />
    /// <remarks>Dead-time tables have corners at their pressures, short-pulse corrections where the linear range begins.</remarks>
    public bool HasCorners => true;

    /// <summary>The same cause with the same parameters at other readings.</summary>
    internal CauseModel With(SeenMixture[] others) => new(this, others);

    /// <inheritdoc />
    public double Lowest(int parameter) =>
        Cause switch
        {
            MixtureDiagnosis.Cause.DeadTime => -leastDeadTime * 1e3,
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime when parameter == 1 => -leastDeadTime * 1e3,
            MixtureDiagnosis.Cause.OneInjectorFlow => -1,
            MixtureDiagnosis.Cause.OneInjectorLeak => 0,
            _ => double.NegativeInfinity,
        };

    /// <inheritdoc />
    public double Highest(int parameter) =>
        Cause switch
        {
            MixtureDiagnosis.Cause.OneInjectorFlow => MostFlow - 1,
            MixtureDiagnosis.Cause.OneInjectorLeak => MostLeak,
            _ => double.PositiveInfinity,
        };

    /// <inheritdoc />
    public bool IsDefined(double[] parameters)
    {
        if (!Array.TrueForAll(parameters, double.IsFinite))
        {
            return false;
        }

        Real[] at = Array.ConvertAll(parameters, p => new Real(p));
        for (int i = 0; i < readings.Length; i++)
        {
            if (!double.IsNaN(unmoved[i]))
            {
                continue;
            }

            InputChange<Real> change = Change(at, i);
            for (int s = 0; s < set.Stages.Length; s++)
            {
                double pressure = MixturePrediction.PressureOf(readings[i].State, s, change).Value;
                if (
                    !(pressure > 0)
                    || !(LeastDeadTime(readings[i], s, pressure) + (change.DeadTime?.Value ?? 0) >= -Rounding)
                )
                {
                    return false;
                }
            }

            if (!(MixturePrediction.Fuel(set, readings[i], change, LeastPressure).Value > 0))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc />
    public T At<T>(T[] parameters, int reading)
        where T : struct, IScalar<T> =>
        double.IsNaN(unmoved[reading])
            ? MixturePrediction.LogLambda(set, readings[reading], Change(parameters, reading), LeastPressure)
            : T.Of(unmoved[reading]);

    /// <summary>The prediction of a reading, as a plain number.</summary>
    internal double At(double[] parameters, int reading) =>
        At(Array.ConvertAll(parameters, p => new Real(p)), reading).Value;

    /// <summary>Whether a parameter is at a bound.</summary>
    internal bool IsAtEnd(double[] parameters) => parameters.Where((p, j) => p <= Lowest(j) || p >= Highest(j)).Any();

    /// <summary>
    /// A sentence on tables that were held or extrapolated beyond their ends at these parameters; null when none was.
    /// </summary>
    internal string? Beyond(double[] parameters)
    {
        Real[] at = Array.ConvertAll(parameters, p => new Real(p));
        for (int i = 0; i < readings.Length; i++)
        {
            InputChange<Real> change = Change(at, i);
            for (int s = 0; s < set.Stages.Length; s++)
            {
                double pressure = MixturePrediction.PressureOf(readings[i].State, s, change).Value;
                foreach (int chamber in readings[i].Chambers)
                {
                    if (CauseWords.Beyond(set.Stages[s].Fitted[chamber], pressure) is { } words)
                    {
                        return words;
                    }
                }
            }
        }

        return null;
    }

    /// <summary>The change of inputs by the parameters at a reading.</summary>
    private InputChange<T> Change<T>(T[] p, int reading)
        where T : struct, IScalar<T>
    {
        ObservedState state = readings[reading].State;
        return Cause switch
        {
            MixtureDiagnosis.Cause.InjectorFlow => new() { Flow = T.Exp(p[0]) },
            MixtureDiagnosis.Cause.DeadTime => new() { DeadTime = p[0] * 1e-3 },
            MixtureDiagnosis.Cause.InjectorFlowAndDeadTime => new() { Flow = T.Exp(p[0]), DeadTime = p[1] * 1e-3 },
            MixtureDiagnosis.Cause.RailPressure => new() { Pressure = p[0] * LeastPressure },
            MixtureDiagnosis.Cause.PressureReference => new() { Reference = p[0] },
            MixtureDiagnosis.Cause.FuelDensity => new() { Density = T.Exp(p[0]) },
            MixtureDiagnosis.Cause.StoichiometricRatio => new() { Stoichiometric = T.Exp(p[0]) },
            MixtureDiagnosis.Cause.AirModel => new() { Air = T.Exp(p[0]) },
            MixtureDiagnosis.Cause.AirModelOverLoad => new() { Air = Between(p, load, state.Manifold) },
            MixtureDiagnosis.Cause.AirModelOverSpeed => new() { Air = Between(p, speed, state.Speed) },
            MixtureDiagnosis.Cause.OneInjectorFlow => new() { Chamber = Chamber, ChamberFlow = 1 + p[0] },
            MixtureDiagnosis.Cause.OneInjectorLeak => new() { Chamber = Chamber, ChamberLeak = p[0] * StaticFlow },
            _ => default,
        };
    }

    private static T Between<T>(T[] ends, (double Low, double High) range, double at)
        where T : struct, IScalar<T>
    {
        double share = range.High > range.Low ? (at - range.Low) / (range.High - range.Low) : 0;
        return T.Exp(((1 - share) * ends[0]) + (share * ends[1]));
    }

    private double[] Unmoved() =>
        [
            .. readings.Select(r =>
                Chamber < 0 || r.Chambers.Contains(Chamber)
                    ? double.NaN
                    : MixturePrediction.LogLambda<Real>(set, r, default, LeastPressure).Value
            ),
        ];

    private double LeastDeadTime(SeenMixture reading, int stage, double pressure)
    {
        double least = double.PositiveInfinity;
        foreach (int chamber in reading.Chambers)
        {
            DeadTimeTable table = set.Stages[stage].Fitted[chamber].DeadTime;
            least = Math.Min(least, table.Read(reading.State.Volts, new Real(pressure)).Value);
        }

        return least;
    }
}
