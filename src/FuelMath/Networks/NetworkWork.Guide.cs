using FuelMath.Formulas;

namespace FuelMath;

/// <content>
/// What is done first with a number that full Newton steps did not settle: parts that switch on and off can send them round
/// in a circle. Drag adds to every slope a part of the law's usual one, so that steps get shorter until the error falls
/// again. It does not change the equations that an answer has to satisfy.
/// Source: [Kelley-Keyes-1998] for the drag, which is a time step that grows as the error falls.
/// </content>
internal sealed partial class NetworkWork<T>
{
    /// <summary>Iterations before damping by slopes begins.</summary>
    private const int FullSteps = 8;

    private const double LeastDrag = 1e-3;
    private const double FirstDrag = 1;
    private const double GreatestDrag = 1e3;
    private const double DragRise = 10;
    private const double DragFall = 0.1;

    private T errorBefore;

    /// <summary>The addition to each slope, as a fraction of the law's usual one.</summary>
    internal T Drag { get; private set; }

    /// <summary>Sets the drag of the next iteration.</summary>
    private void Guide(Mask<T> settled, T error, T limit)
    {
        T more = T.Min(T.Of(GreatestDrag), T.Max(T.Of(FirstDrag), DragRise * Drag));
        T less = T.Select(T.Less(error, T.Max(limit, 0.5 * errorBefore)), DragFall * Drag, Math.Sqrt(DragFall) * Drag);
        T next = T.Select(T.Less(error, T.Max(limit, errorBefore)), less, more);
        Drag = T.Select(settled | T.Less(next, T.Of(LeastDrag)), T.Of(0), next);
        errorBefore = error;
    }
}
