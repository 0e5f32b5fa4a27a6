using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <content>
/// What is done with a number that full Newton steps did not settle: parts that switch on and off can send them round in a
/// circle. Two things break it, number by number. Drag adds to every slope a part of the law's usual one, so that steps
/// get shorter until the error falls again. And from time to time shut parts are made leaky, which lets flows find their
/// way, and tightened again in steps. Neither changes the equations that an answer has to satisfy.
/// Source: [Kelley-Keyes-1998] for the drag, which is a time step that grows as the error falls.
/// </content>
internal sealed partial class NetworkWork<T>
{
    /// <summary>Iterations before a number is guided.</summary>
    private const int FullSteps = 8;

    /// <summary>Iterations between two times that shut parts are made leaky.</summary>
    private const int Period = 25;

    /// <summary>Flows that change less than this part of the greatest are near a solution.</summary>
    private const double Near = 1e-2;

    /// <summary>The slope of a leaky shut part, Pa s/m3.</summary>
    private const double Leaky = 1e13;

    /// <summary>By how much a leaky part is tightened at once.</summary>
    private const double Tighten = 1e3;
    private const double LeastDrag = 1e-3;
    private const double GreatestDrag = 1e3;
    private const double DragRise = 10;
    private const double Forgotten = 1e300;

    // Different each time, so that no circle fits them all.
    private static readonly double[] Leakiness = [1, 0.1, 100, 0.1, 10, 1e3];
    private static readonly double[] FirstDrag = [1, 0.3, 10, 0.1, 3];
    private static readonly double[] DragFall = [0.1, 0.1, 0.3, 0.5, 0.5, 0.7, 0.7];

    private T errorBefore;

    /// <summary>What is added to each slope, as a part of the law's usual one.</summary>
    internal T Drag { get; private set; }

    /// <summary>How steep a shut part is now, Pa s/m3.</summary>
    internal T Reverse { get; private set; }

    /// <summary>Sets drag and leakiness for the next iteration, and says where parts are tight.</summary>
    private Mask<T> Guide(int iteration, Mask<T> settled, Mask<T> near, T error, T limit)
    {
        T none = T.Of(0);
        T tight = T.Of(0.5 * Stiff.Reverse);
        int round = iteration / Period;
        if (iteration % Period == Period - 1)
        {
            Reverse = T.Select(settled, Reverse, T.Of(Leaky * Leakiness[round % Leakiness.Length]));
            Drag = none;
            errorBefore = T.Of(Forgotten);
        }

        Mask<T> tighten = near & T.Less(Reverse, tight);
        Reverse = T.Select(tighten, T.Min(T.Of(Stiff.Reverse), Tighten * Reverse), Reverse);
        T more = T.Min(T.Of(GreatestDrag), T.Max(T.Of(FirstDrag[round % FirstDrag.Length]), DragRise * Drag));
        T less = T.Select(
            T.Less(error, T.Max(limit, 0.5 * errorBefore)),
            DragFall[round % DragFall.Length] * Drag,
            Math.Sqrt(DragFall[round % DragFall.Length]) * Drag
        );
        T next = T.Select(T.Less(error, T.Max(limit, errorBefore)), less, more);
        Drag = T.Select(settled | T.Less(next, T.Of(LeastDrag)), none, next);
        errorBefore = T.Select(tighten, T.Of(Forgotten), error);
        return T.Less(tight, Reverse);
    }
}
