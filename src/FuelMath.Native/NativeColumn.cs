using System.Buffers;

namespace FuelMath.Native;

/// <summary>Memory of the caller as a column. Used again for other memory, so that a run allocates nothing.</summary>
internal sealed unsafe class NativeColumn : MemoryManager<double>
{
    private double* start;
    private int rows;

    internal ReadOnlyMemory<double> Over(double* at, int count)
    {
        start = at;
        rows = count;
        return Memory;
    }

    /// <inheritdoc />
    public override Span<double> GetSpan() => new(start, rows);

    /// <inheritdoc />
    public override MemoryHandle Pin(int elementIndex = 0) => new(start + elementIndex);

    /// <inheritdoc />
    public override void Unpin() { }

    /// <inheritdoc />
    protected override void Dispose(bool disposing) { }
}
