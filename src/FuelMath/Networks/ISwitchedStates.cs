using System.Collections.Immutable;

namespace FuelMath;

/// <summary>The states for a set of running pumps: of a network, of a system, or of one of many points.</summary>
/// <typeparam name="T">The type of a state.</typeparam>
internal interface ISwitchedStates<T>
{
    /// <summary>What is searched for, for a refusal.</summary>
    string Sought { get; }

    /// <summary>The states for a set of running pumps, a bit for each.</summary>
    /// <exception cref="NoSolutionException">There is none.</exception>
    /// <exception cref="OutsideTableException">A part has no data there.</exception>
    ImmutableArray<T> Solve(int running);

    /// <summary>The value watched by a pump's switch in a state, SI.</summary>
    /// <exception cref="NoSolutionException">That is not determined.</exception>
    double ValueIn(T state, SwitchedPump pump);

    /// <summary>The state with sentences on how it was chosen, which are made when they are read: of many points few are.</summary>
    T With(T state, IEnumerable<string> remarks);
}
