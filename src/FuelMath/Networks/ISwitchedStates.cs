using System.Collections.Immutable;

namespace FuelMath;

/// <summary>What some set of running pumps leads to: a network's states, a system's, or a point of many.</summary>
/// <typeparam name="T">What stands for a state.</typeparam>
internal interface ISwitchedStates<T>
{
    /// <summary>What is sought, for a refusal.</summary>
    string Sought { get; }

    /// <summary>The states with some pumps running, a bit for each.</summary>
    /// <exception cref="NoSolutionException">There is none.</exception>
    /// <exception cref="OutsideTableException">A part has no data there.</exception>
    ImmutableArray<T> Solve(int running);

    /// <summary>What a pump's switch sees in a state, SI.</summary>
    /// <exception cref="NoSolutionException">That is not determined.</exception>
    double ValueIn(T state, SwitchedPump pump);

    /// <summary>The state with a sentence on how it was chosen.</summary>
    T With(T state, string remark);
}
