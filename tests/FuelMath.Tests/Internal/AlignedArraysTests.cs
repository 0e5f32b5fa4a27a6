using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using FuelMath.Formulas;

namespace FuelMath.Tests.Internal;

public sealed class AlignedArraysTests
{
    [Theory]
    [InlineData(16)]
    [InlineData(41)]
    public void Of_Vectors_BeginWithALineOfTheCache(int count)
    {
        WideLane[][] arrays =
        [
            .. Enumerable.Range(0, 40).Select(_ => AlignedArrays.Of<WideLane>(count, Unsafe.SizeOf<WideLane>())),
        ];

        // By chance it would be one in eight; how many it is depends on what other threads pin between.
        Assert.All(arrays, a => Assert.Equal(count, a.Length));
        Assert.InRange(arrays.Count(a => Marshal.UnsafeAddrOfPinnedArrayElement(a, 0) % 64 == 0), 20, 40);
    }

    [Fact]
    public void Of_PlainNumbersOrNone_IsAnOrdinaryArray()
    {
        Assert.Equal(3, AlignedArrays.Of<Real>(3, Unsafe.SizeOf<Real>()).Length);
        Assert.Empty(AlignedArrays.Of<WideLane>(0, Unsafe.SizeOf<WideLane>()));
        Assert.Equal(2, AlignedArrays.Of<(WideLane, object?)>(2, Unsafe.SizeOf<WideLane>()).Length);
    }
}
