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
        // By chance it would be one in eight. What other threads pin between makes it fewer for a while.
        int most = 0;
        for (int round = 0; round < 50 && most < 20; round++)
        {
            WideLane[][] arrays =
            [
                .. Enumerable.Range(0, 40).Select(_ => AlignedArrays.Of<WideLane>(count, Unsafe.SizeOf<WideLane>())),
            ];
            Assert.All(arrays, a => Assert.Equal(count, a.Length));
            most = Math.Max(most, arrays.Count(a => Marshal.UnsafeAddrOfPinnedArrayElement(a, 0) % 64 == 0));
        }

        Assert.InRange(most, 20, 40);
    }

    [Fact]
    public void Of_PlainNumbersOrNone_IsAnOrdinaryArray()
    {
        Assert.Equal(3, AlignedArrays.Of<Real>(3, Unsafe.SizeOf<Real>()).Length);
        Assert.Empty(AlignedArrays.Of<WideLane>(0, Unsafe.SizeOf<WideLane>()));
        Assert.Equal(2, AlignedArrays.Of<(WideLane, object?)>(2, Unsafe.SizeOf<WideLane>()).Length);
    }
}
