using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Kernel: the lambda of a reading predicted from the fitted injectors, with one or more inputs changed. The same
/// injectors, ratings, dead-time tables and short-pulse corrections as in <see cref="FittedInjectors"/>, in any scalar.
/// </summary>
internal static class MixturePrediction
{
    /// <summary>The logarithm of lambda over the target.</summary>
    /// <param name="set">The presumed set.</param>
    /// <param name="seen">The reading.</param>
    /// <param name="change">The changed inputs.</param>
    /// <param name="referencePressure">The reference pressure of a leak, Pa.</param>
    internal static T LogLambda<T>(
        FittedInjectors set,
        SeenMixture seen,
        in InputChange<T> change,
        double referencePressure
    )
        where T : struct, IScalar<T>
    {
        T fuel = Fuel(set, seen, change, referencePressure);
        T air = T.Of(seen.Air);
        T stoichiometric = T.Of(set.Fuel.StoichiometricRatio.Si);
        air = change.Air is { } a ? air * a : air;
        stoichiometric = change.Stoichiometric is { } s ? stoichiometric * s : stoichiometric;
        return T.Log(Combustion.Lambda(air, fuel, stoichiometric) / seen.State.Target);
    }

    /// <summary>The fuel of the chambers of a reading in one cycle, kg.</summary>
    internal static T Fuel<T>(FittedInjectors set, SeenMixture seen, in InputChange<T> change, double referencePressure)
        where T : struct, IScalar<T>
    {
        T fuel = T.Of(0);
        for (int s = 0; s < seen.Widths.Length; s++)
        {
            if (seen.Widths[s] > 0)
            {
                fuel += OfStage(set.Stages[s], s, seen, change);
            }
        }

        if (change.ChamberLeak is { } leak && seen.Chambers.Contains(change.Chamber))
        {
            fuel += leak * T.Sqrt(PressureOf(seen.State, 0, change) / referencePressure) * seen.State.Cycle;
        }

        return fuel;
    }

    /// <summary>The pressure across the injectors of a stage, Pa.</summary>
    internal static T PressureOf<T>(ObservedState state, int stage, in InputChange<T> change)
        where T : struct, IScalar<T>
    {
        T pressure = T.Of(state.Pressures[stage]);
        pressure = change.Pressure is { } more ? pressure + more : pressure;
        return change.Reference is { } share ? pressure - (share * state.Boost) : pressure;
    }

    private static T OfStage<T>(FittedInjectors.Stage stage, int index, SeenMixture seen, in InputChange<T> change)
        where T : struct, IScalar<T>
    {
        ObservedState state = seen.State;
        T pressure = PressureOf(state, index, change);
        T density = T.Of(state.Density);
        density = change.Density is { } factor ? density * factor : density;
        T sum = T.Of(0);
        T mass = T.Of(0);
        Injector? last = null;
        foreach (int chamber in seen.Chambers)
        {
            Injector injector = stage.Fitted[chamber];
            if (!ReferenceEquals(injector, last))
            {
                // Reuse the mass of identical injectors.
                mass = OfInjector(
                    injector,
                    seen.Widths[index],
                    state.Periods[index],
                    state.Volts,
                    pressure,
                    density,
                    change
                );
                last = injector;
            }

            // A factor on flow only scales the mass.
            sum += change.ChamberFlow is { } own && chamber == change.Chamber ? mass * own : mass;
        }

        return sum * state.Pulses[index];
    }

    private static T OfInjector<T>(
        Injector injector,
        double width,
        double period,
        double volts,
        T pressure,
        T density,
        in InputChange<T> change
    )
        where T : struct, IScalar<T>
    {
        T flow = injector.Rating.MassFlow(pressure, density);
        flow = change.Flow is { } factor ? flow * factor : flow;
        T dead = injector.DeadTime.Read(volts, pressure);
        dead = change.DeadTime is { } more ? dead + more : dead;
        return injector.Mass(width, period, flow, dead);
    }
}
