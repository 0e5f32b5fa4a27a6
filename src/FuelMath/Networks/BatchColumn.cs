using FuelMath.Scalars;
using FuelMath.Tables;

namespace FuelMath.Networks;

/// <summary>One setting that differs from point to point, in SI numbers. Immutable.</summary>
internal abstract class BatchColumn(int place)
{
    /// <summary>The node or link that it sets; a later column of the same kind and place replaces an earlier one.</summary>
    internal int Place { get; } = place;

    /// <summary>Sets a workspace for some points; where the lane holds more numbers, they repeat the last point.</summary>
    internal abstract void Apply<T>(NetworkWork<T> work, int first, int count)
        where T : struct, ILane<T>;

    /// <summary>The numbers of some points, the last one repeated.</summary>
    protected static T Load<T>(double[] values, int first, int count)
        where T : struct, ILane<T>
    {
        if (count >= T.Count)
        {
            return T.Load(values.AsSpan(first, T.Count));
        }

        Span<double> numbers = stackalloc double[T.Count];
        values.AsSpan(first, count).CopyTo(numbers);
        numbers[count..].Fill(values[first + count - 1]);
        return T.Load(numbers);
    }
}

/// <summary>The fluid: density in kg/m3, dynamic viscosity in Pa s.</summary>
internal sealed class FluidColumn(double[] density, double[] viscosity) : BatchColumn(0)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetFluid(Load<T>(density, first, count), Load<T>(viscosity, first, count));
}

/// <summary>The pressure of a node of fixed pressure, Pa gauge.</summary>
internal sealed class PressureColumn(int node, double[] pressure) : BatchColumn(node)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetPressure(Place, Load<T>(pressure, first, count));
}

/// <summary>What is drawn at a junction, m3/s.</summary>
internal sealed class DrawColumn(int node, double[] draw) : BatchColumn(node)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetDraw(Place, Load<T>(draw, first, count));
}

/// <summary>Capped injectors: C in m3/s per root of Pa, and the commanded flow in m3/s.</summary>
internal sealed class InjectorColumn(int link, double[] coefficient, double[] commanded) : BatchColumn(link)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetInjector(Place, Load<T>(coefficient, first, count), Load<T>(commanded, first, count));
}

/// <summary>The reference pressure of a regulator, Pa gauge.</summary>
internal sealed class ReferenceColumn(int link, double[] reference) : BatchColumn(link)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetReference(Place, Load<T>(reference, first, count));
}

/// <summary>A tabulated pump's pieces.</summary>
internal sealed class PumpTableColumn(int link, Piece[][] pieces) : BatchColumn(link)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetPump(Place, pieces.AsSpan(first, Math.Min(count, T.Count)));
}

/// <summary>A power-law pump's shutoff (Pa), factor, and flow at half the shutoff (m3/s).</summary>
internal sealed class PumpPowerColumn(int link, double[] shutoff, double[] factor, double[] half) : BatchColumn(link)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetPump(Place, Load<T>(shutoff, first, count), Load<T>(factor, first, count), Load<T>(half, first, count));
}
