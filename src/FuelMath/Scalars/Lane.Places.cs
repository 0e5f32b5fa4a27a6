using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace FuelMath.Formulas;

/// <content>What takes its numbers from different places, or joins them.</content>
public readonly partial struct Lane
{
    [MethodImpl(Inline)]
    static Lane ILane<Lane>.Gather(ReadOnlySpan<double> from, ReadOnlySpan<int> places)
    {
        if (Count == 4)
        {
            ReadOnlySpan<int> at = places[..4];
            return new(Vector256.Create(from[at[0]], from[at[1]], from[at[2]], from[at[3]]).AsVector());
        }

        Span<double> numbers = stackalloc double[Count];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = from[places[i]];
        }

        return new(numbers);
    }

    [MethodImpl(Inline)]
    static double ILane<Lane>.Greatest(Lane value)
    {
        double greatest = value.Numbers[0];
        for (int i = 1; i < Count; i++)
        {
            greatest = Math.Max(greatest, value.Numbers[i]);
        }

        return greatest;
    }

    [MethodImpl(Inline)]
    static void ILane<Lane>.Pick(
        ReadOnlySpan<double> records,
        Lane at,
        out Lane first,
        out Lane second,
        out Lane third,
        out Lane fourth
    )
    {
        if (Count == 4)
        {
            ReadOnlySpan<double> a = Record(records, at[0]);
            ReadOnlySpan<double> b = Record(records, at[1]);
            ReadOnlySpan<double> c = Record(records, at[2]);
            ReadOnlySpan<double> d = Record(records, at[3]);
            first = new(Vector256.Create(a[0], b[0], c[0], d[0]).AsVector());
            second = new(Vector256.Create(a[1], b[1], c[1], d[1]).AsVector());
            third = new(Vector256.Create(a[2], b[2], c[2], d[2]).AsVector());
            fourth = new(Vector256.Create(a[3], b[3], c[3], d[3]).AsVector());
        }
        else
        {
            first = PickOne(records, at, 0);
            second = PickOne(records, at, 1);
            third = PickOne(records, at, 2);
            fourth = PickOne(records, at, 3);
        }
    }

    private static ReadOnlySpan<double> Record(ReadOnlySpan<double> records, double at) =>
        records.Slice(4 * (int)at, 4);

    /// <summary>One number of each record, in a vector of any width.</summary>
    private static Lane PickOne(ReadOnlySpan<double> records, Lane at, int number)
    {
        Span<double> numbers = stackalloc double[Count];
        for (int row = 0; row < numbers.Length; row++)
        {
            numbers[row] = Record(records, at[row])[number];
        }

        return new(numbers);
    }
}
