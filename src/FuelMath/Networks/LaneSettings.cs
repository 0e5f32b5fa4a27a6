using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Settings that differ within a lane.</summary>
internal static class LaneSettings
{
    /// <summary>Sets a link for each element of a lane.</summary>
    /// <param name="work">The workspace.</param>
    /// <param name="link">The link.</param>
    /// <param name="numbers">Its settings, one after the other, each with a number for each of the lane.</param>
    internal static void SetLane<T>(this NetworkWork<T> work, int link, ReadOnlySpan<double> numbers)
        where T : struct, ILane<T>
    {
        Span<T> settings = work.Settings.AsSpan(0, numbers.Length / T.Count);
        for (int k = 0; k < settings.Length; k++)
        {
            settings[k] = T.Load(numbers[(k * T.Count)..]);
        }

        work.Set(link, settings);
    }

    /// <summary>Copies one element of a lane with all that a verdict needs.</summary>
    internal static void Take<T>(this NetworkWork<Real> one, NetworkWork<T> work, int number)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        Take(work.Pressure, one.Pressure, numbers, number);
        Take(work.Flow, one.Flow, numbers, number);
        Take(work.Memory, one.Memory, numbers, number);
        Take(work.FromUp, one.FromUp, numbers, number);
        Take(work.ToDown, one.ToDown, numbers, number);
        Take(work.Error, one.Error, numbers, number);
        T.Store(work.Iterations, numbers);
        double iterations = numbers[number];
        T.Store(work.StartScale, numbers);
        one.TakeOver(new Real(iterations), new Real(numbers[number]));
    }

    /// <summary>Copies one element of a lane over another, so that its warm start begins there too.</summary>
    internal static void Repeat<T>(this NetworkWork<T> work, int number, int inPlaceOf)
        where T : struct, ILane<T>
    {
        Span<double> numbers = stackalloc double[T.Count];
        foreach (T[] all in (ReadOnlySpan<T[]>)[work.Pressure, work.Flow, work.Memory])
        {
            for (int i = 0; i < all.Length; i++)
            {
                T.Store(all[i], numbers);
                numbers[inPlaceOf] = numbers[number];
                all[i] = T.Load(numbers);
            }
        }
    }

    private static void Take<T>(T[] from, Real[] to, Span<double> numbers, int number)
        where T : struct, ILane<T>
    {
        for (int i = 0; i < to.Length; i++)
        {
            T.Store(from[i], numbers);
            to[i] = new Real(numbers[number]);
        }
    }
}
