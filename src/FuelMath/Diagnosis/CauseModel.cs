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
    /// <summary>A dead time that is less than this below zero is zero, s.</summary>
    private const double Rounding = 1e-15;

    private readonly FittedInjectors set;
    private readonly SeenMixture[] readings;

    /// <summary>The prediction of readings that do not include the chamber; NaN for those that do.</summary>
    private readonly double[] unmoved;

    internal CauseModel(FittedInjectors set, CauseKind kind, int chamber, SeenMixture[] readings)
    {
        (this.set, Kind, Chamber, this.readings) = (set, kind, chamber, readings);
        Load = (readings.Min(r => r.State.Manifold), readings.Max(r => r.State.Manifold));
        Speed = (readings.Min(r => r.State.Speed), readings.Max(r => r.State.Speed));
        LeastPressure = readings.Min(r => r.State.Pressures.Min());
        LeastDeadTime = readings.Min(r => r.State.Pressures.Select((p, s) => LeastDeadTimeOf(r, s, p)).Min());
        unmoved = Unmoved();
        if (chamber >= 0)
        {
            Injector own = set.Stages[0].Fitted[chamber];
            StaticFlow = own.Rating.MassFlow(new Real(LeastPressure), new Real(readings[0].State.Density)).Value;
        }
    }

    private CauseModel(CauseModel other, SeenMixture[] readings)
    {
        (set, Kind, Chamber, this.readings) = (other.set, other.Kind, other.Chamber, readings);
        (Load, Speed) = (other.Load, other.Speed);
        (LeastPressure, StaticFlow, LeastDeadTime) = (other.LeastPressure, other.StaticFlow, other.LeastDeadTime);
        unmoved = Unmoved();
    }

    internal CauseKind Kind { get; }

    internal MixtureDiagnosis.Cause Cause => Kind.Cause;

    internal string Name => Kind.NameFor(Chamber);

    /// <summary>The chamber, counted from 0; -1 for a cause of all.</summary>
    internal int Chamber { get; }

    /// <summary>The least pressure presumed, Pa: the unit of a pressure error, and what a leak is given at.</summary>
    internal double LeastPressure { get; }

    /// <summary>The static flow of the chamber's first injector at that pressure, kg/s: the unit of a leak.</summary>
    internal double StaticFlow { get; }

    /// <summary>The manifold pressures that were fitted, Pa.</summary>
    internal (double Low, double High) Load { get; }

    /// <summary>The speeds that were fitted.</summary>
    internal (double Low, double High) Speed { get; }

    /// <summary>The least dead time presumed, s.</summary>
    internal double LeastDeadTime { get; }

    internal SeenMixture[] Readings => readings;

    /// <inheritdoc />
    public int ParameterCount => Kind.Parameters.Length;

    /// <inheritdoc />
    /// <remarks>Dead-time tables have corners at their pressures, short-pulse corrections where the linear range begins.</remarks>
    public bool HasCorners => true;

    /// <summary>The same cause with the same parameters at other readings.</summary>
    internal CauseModel With(SeenMixture[] others) => new(this, others);

    /// <inheritdoc />
    public double Lowest(int parameter) => Kind.Parameters[parameter].Lowest(this);

    /// <inheritdoc />
    public double Highest(int parameter) => Kind.Parameters[parameter].Highest(this);

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

            InputChange<Real> change = Kind.Change(this, readings[i].State, at);
            for (int s = 0; s < set.Stages.Length; s++)
            {
                double pressure = MixturePrediction.PressureOf(readings[i].State, s, change).Value;
                if (
                    !(pressure > 0)
                    || !(LeastDeadTimeOf(readings[i], s, pressure) + (change.DeadTime?.Value ?? 0) >= -Rounding)
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
            ? MixturePrediction.LogLambda(
                set,
                readings[reading],
                Kind.Change(this, readings[reading].State, parameters),
                LeastPressure
            )
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
            InputChange<Real> change = Kind.Change(this, readings[i].State, at);
            for (int s = 0; s < set.Stages.Length; s++)
            {
                double pressure = MixturePrediction.PressureOf(readings[i].State, s, change).Value;
                foreach (int chamber in readings[i].Chambers)
                {
                    if (TableReach.Beyond(set.Stages[s].Fitted[chamber], pressure) is { } words)
                    {
                        return words;
                    }
                }
            }
        }

        return null;
    }

    private double[] Unmoved() =>
        [
            .. readings.Select(r =>
                Chamber < 0 || r.Chambers.Contains(Chamber)
                    ? double.NaN
                    : MixturePrediction.LogLambda<Real>(set, r, default, LeastPressure).Value
            ),
        ];

    private double LeastDeadTimeOf(SeenMixture reading, int stage, double pressure)
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
