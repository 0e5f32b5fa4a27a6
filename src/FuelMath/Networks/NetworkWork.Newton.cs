using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <content>
/// The method: Newton on all links, flows eliminated, so that each iteration solves for one change of pressure a node.
/// Source: [Todini-Pilati-1988] for the elimination of flows. A number that is done stands still, so that a lane's result
/// does not depend on its neighbors. A number that is not done after some iterations is guided, then its network is started
/// up: see NetworkWork.Guide.cs and NetworkWork.StartUp.cs.
/// </content>
internal sealed partial class NetworkWork<T>
{
    internal const int MostIterations = 1000;

    /// <summary>Flows have converged when none changes by more than this fraction of the greatest.</summary>
    private const double Settled = 1e-7;

    /// <summary>Without flow: this fraction of the greatest flow of a cold start.</summary>
    private const double SettledOfStart = 1e-9;

    /// <summary>What a cold start would begin with where every part is shut, m³/s: 36 L/h.</summary>
    private const double ScaleWhereShut = 1e-5;

    /// <summary>
    /// Factor on the tolerance after many iterations: near zero flow a quadratic law converges slowly, though its loss
    /// is already accurate.
    /// </summary>
    private const double ManyIterationsFactor = 10;

    /// <summary>
    /// A step computed as the difference of numbers far larger than the flows has lost its digits: it counts as not converged.
    /// </summary>
    private const double MostTerm = 1e5;
    private const double MostTermOfStart = 1e11;

    /// <summary>
    /// Flows that balance and satisfy their laws are accepted when the next step would change none by more than this
    /// fraction of the greatest; that step is computed but not applied.
    /// </summary>
    private const double NextChange = 0.5 * MassTolerance;

    /// <summary>Tolerance of a link's pressure residual: this, Pa, ...</summary>
    internal const double PressureTolerance = 1e-3;

    /// <summary>... plus this fraction of the greatest pressure, ...</summary>
    internal const double RelativeTolerance = 1e-9;

    /// <summary>... limited to this, Pa, because behind a closed part the pressure is arbitrary.</summary>
    private const double GreatestPressure = 1e7;

    /// <summary>Tolerance of a link's pressure residual, Pa, for a greatest pressure.</summary>
    internal static T PressureLimit(T greatest) =>
        PressureTolerance + (RelativeTolerance * T.Min(greatest, T.Of(GreatestPressure)));

    /// <summary>Tolerance of the mass balance, as a fraction of the greatest flow.</summary>
    internal const double MassTolerance = 1e-9;

    /// <summary>x = 1/sqrt(f) of a friction factor of 0.024.</summary>
    private const double UsualRoot = 6.5;

    /// <summary>Solves the network.</summary>
    /// <param name="warm">Whether to start from the pressures and flows of the workspace.</param>
    /// <returns>Where a solution was found; see <see cref="Iterations"/> and <see cref="WorstError"/>.</returns>
    internal Mask<T> Solve(bool warm) => Solve(warm, T.Of(0));

    /// <summary>Solves the network, or comes near enough to its solution to go on from.</summary>
    /// <param name="warm">Whether to start from the pressures and flows of the workspace.</param>
    /// <param name="near">
    /// A full step that changes no flow by more than this fraction of the greatest is the last one; zero for the solution.
    /// Newton's method squares the error, so that about the square of this fraction is left.
    /// </param>
    /// <returns>Where a solution was found, or is near.</returns>
    internal Mask<T> Solve(bool warm, T near)
    {
        Start(warm);
        int unknown = Plan.Unknown;
        T[] right = Right;
        T one = T.Of(1);
        T none = T.Of(0);
        T limit = T.Of(PressureTolerance);
        Mask<T> done = T.Less(one, none);
        Mask<T> settled = done;
        Mask<T> balanced = done;
        Iterations = none;
        WorstError = none;
        for (int iteration = 0; iteration <= MostIterations; iteration++)
        {
            bool startingUp = iteration > GuidedSteps;
            T error = Linearize(done);
            origin = null;
            if (startingUp)
            {
                Yield();
            }

            if (draining)
            {
                Drain();
            }

            WorstError = T.Select(done, WorstError, error);
            done |= settled & T.Less(error, limit);
            if (T.All(done))
            {
                break;
            }

            Iterations = T.Select(done, Iterations, Iterations + 1);
            Plan.Order.Solve(Matrix, right);
            Array.Clear(right, unknown, right.Length - unknown);
            NextFlows(out StepSizes<T> sizes);
            (T change, T scale) = (sizes.Change, sizes.Scale);
            done |= balanced & T.Less(WorstPlain, limit) & T.Less(change, NextChange * scale);
            if (T.All(done))
            {
                break;
            }

            limit = PressureLimit(MovePressures(done));
            double factor = startingUp ? ManyIterationsFactor : 1;
            T steadily = (MostTerm * scale) + (MostTermOfStart * startScale);
            settled = T.Less(change, (Settled * scale) + (factor * startScale)) & T.Less(sizes.OwnTerm, steadily);
            balanced = T.Less(one, none);
            if (startingUp)
            {
                CalmStep(done, settled);
                settled = EndStep(done, settled, change, scale, T.Less(error, FoundError * limit));
            }
            else if (iteration == GuidedSteps)
            {
                Rest(done);
                settled = T.Less(one, none);
            }
            else
            {
                if (iteration < FullSteps)
                {
                    errorBefore = error;
                }
                else
                {
                    Guide(settled, error, limit);
                }

                Mask<T> full = Step(done, settled);
                if (iteration < FullSteps)
                {
                    balanced = full & T.Less(T.Max(sizes.OwnTerm, sizes.PressureTerm), steadily);
                    done |= full & T.Less(change, near * scale);
                    if (T.All(done))
                    {
                        break;
                    }
                }
            }
        }

        return done;
    }

    /// <summary>
    /// Writes all links, linearized at the present flows, into the equations; returns the largest pressure residual,
    /// Pa.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal T Linearize(in Mask<T> done)
    {
        Array.Clear(Matrix);
        T[] right = Right;
        T[] draw = Draw;
        int unknown = Plan.Unknown;
        for (int i = 0; i < unknown; i++)
        {
            right[i] = -draw[i];
        }

        T error = T.Of(0);
        WorstPlain = error;
        foreach (LinkGroup<T> group in groups)
        {
            group.Linearize(this, in done, ref error);
        }

        return error;
    }

    /// <summary>Writes a linearized link into the equations.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Take(in Ends ends, T free, T fromUp, T toDown, T error)
    {
        Free[ends.Link] = free;
        FromUp[ends.Link] = fromUp;
        ToDown[ends.Link] = toDown;
        Error[ends.Link] = error;

        // Mass balance of both ends in the change of pressure; a given pressure does not change.
        T[] right = Right;
        T[] matrix = Matrix;
        right[ends.From] -= free;
        right[ends.To] += free;
        matrix[ends.Up] += fromUp;
        matrix[ends.Down] += toDown;
    }

    /// <summary>Sets flows, roots and pressures to the start of a solve.</summary>
    internal void Start(bool warm)
    {
        T greatest = T.Of(0);
        foreach (LinkGroup<T> group in groups)
        {
            greatest = group.Start(this, warm, greatest);
        }

        startScale = SettledOfStart * T.Select(T.Less(T.Of(0), greatest), greatest, T.Of(ScaleWhereShut));
        Drag = T.Of(0);
        if (!warm)
        {
            Array.Fill(Memory, T.Of(UsualRoot));
            Array.Clear(Pressure, 0, Plan.Unknown);
        }
    }
}
