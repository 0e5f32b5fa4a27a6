using FuelMath.Formulas;

namespace FuelMath;

/// <content>
/// What is done with a state in which a region that nothing flows into can't be moved to its level as a whole, because a
/// regulator in it holds a pressure or because its parts lift each other. Every junction is given a small way out to
/// nothing: far wider than shut parts leak, far narrower than what counts as balanced. What the network does not fill then
/// runs dry, and what it fills stands where the parts that lead there just open.
/// </content>
internal sealed partial class NetworkWork<T>
{
    /// <summary>The drain of a junction at a pressure of one bar, as a fraction of the balance tolerance.</summary>
    private const double DrainAtOneBar = 0.05;

    /// <summary>Factor on the tightness of closed parts while draining.</summary>
    private const double Tighter = 1e3;

    private bool draining;

    /// <summary>The slope of closed parts, Pa s/m³.</summary>
    internal T Reverse { get; private set; } = T.Of(Stiff.Reverse);

    private T DrainPerPressure => DrainAtOneBar / 1e5 * startScale;

    /// <summary>Solves the network with the drains.</summary>
    /// <param name="warm">Whether to start from the state of the workspace.</param>
    internal Mask<T> SolveDraining(bool warm)
    {
        (draining, Reverse) = (true, T.Of(Tighter * Stiff.Reverse));
        Mask<T> solved = Solve(warm);
        (draining, Reverse) = (false, T.Of(Stiff.Reverse));
        return solved;
    }

    /// <summary>The total drain of all junctions in the state found by <see cref="SolveDraining"/>, m³/s.</summary>
    internal T Drained()
    {
        T sum = T.Of(0);
        for (int i = 0; i < Plan.Unknown; i++)
        {
            sum += T.Abs(DrainAt(i));
        }

        return sum;
    }

    private T DrainAt(int node) => DrainPerPressure * (PressureAt(node) - NetworkVerdict.Vacuum);

    /// <summary>Adds the drains to the linearized balances.</summary>
    private void Drain()
    {
        for (int i = 0; i < Plan.Unknown; i++)
        {
            Matrix[Elimination.Slot(i)] += DrainPerPressure;
            Right[i] -= DrainAt(i);
        }
    }
}
