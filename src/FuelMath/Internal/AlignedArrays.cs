using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FuelMath;

/// <summary>Arrays of vectors that begin where a line of the cache does, so that no vector lies in two lines.</summary>
/// <remarks>
/// An array begins at a multiple of 8 bytes, and the collector may move it. With every vector in two lines, a batch of
/// networks takes about a quarter longer. A pinned array stays where it is; it is made again until it lies
/// well, which is a matter of speed alone.
/// </remarks>
internal static class AlignedArrays
{
    private const int Line = 64;
    private const int LeastVector = 32;
    private const int Attempts = 40;

    /// <summary>An array of items that are made of vectors, or of plain numbers, which lie well anywhere.</summary>
    /// <param name="count">The number of items.</param>
    /// <param name="vector">The bytes of a vector.</param>
    internal static TItem[] Of<TItem>(int count, int vector)
        where TItem : struct
    {
        if (
            vector < LeastVector
            || count == 0
            || Unsafe.SizeOf<TItem>() % vector != 0
            || RuntimeHelpers.IsReferenceOrContainsReferences<TItem>()
        )
        {
            return new TItem[count];
        }

        // Held while it goes on, so that none is given the place of one before it. Arrays that follow each other lie at
        // all eight places in turn; where another thread puts its own between them, one in eight lies well.
        var tried = new TItem[Attempts][];
        for (int i = 0; i < Attempts; i++)
        {
            tried[i] = GC.AllocateArray<TItem>(count, pinned: true);
            if (LiesWell(tried[i]))
            {
                return tried[i];
            }
        }

        return tried[0];
    }

    private static bool LiesWell<TItem>(TItem[] array) => Marshal.UnsafeAddrOfPinnedArrayElement(array, 0) % Line == 0;
}
