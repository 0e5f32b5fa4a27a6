using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FuelMath;

/// <summary>Arrays of vectors that begin where a line of the cache does, so that no vector lies in two lines.</summary>
/// <remarks>
/// An array begins at a multiple of 8 bytes, and the collector may move it. With every vector in two lines, a batch of
/// networks takes about a quarter longer. A pinned array stays where it is; it is made again, behind a filler, until it
/// lies well, which is a matter of speed alone.
/// </remarks>
internal static class AlignedArrays
{
    private const int Line = 64;
    private const int LeastVector = 32;
    private const int Attempts = 8;

    /// <summary>Head and length of an array, which stand before its items.</summary>
    private const int Head = 24;

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

        TItem[] array = GC.AllocateArray<TItem>(count, pinned: true);
        for (int i = 0; i < Attempts && Beyond(array) != 0; i++)
        {
            // The next array mostly begins where the filler ends.
            int end = Beyond(array) + (count * Unsafe.SizeOf<TItem>()) + Head;
            GC.KeepAlive(GC.AllocateUninitializedArray<byte>((Line - ((end + Head) % Line)) % Line, pinned: true));
            array = GC.AllocateArray<TItem>(count, pinned: true);
        }

        return array;
    }

    private static int Beyond<TItem>(TItem[] array) => (int)(Marshal.UnsafeAddrOfPinnedArrayElement(array, 0) % Line);
}
