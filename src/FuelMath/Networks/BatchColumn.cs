using FuelMath.Formulas;

namespace FuelMath;

/// <summary>One setting that differs from point to point, in SI numbers.</summary>
internal abstract class BatchColumn(int place)
{
    /// <summary>The node or link that it sets; a later column of the same kind and place replaces an earlier one.</summary>
    internal int Place { get; } = place;

    /// <summary>Sets a workspace for some points; where the lane holds more numbers, they repeat the last point.</summary>
    internal abstract void Apply<T>(NetworkWork<T> work, int first, int count)
        where T : struct, ILane<T>;

    /// <summary>What it gives a node of fixed pressure, Pa gauge; null where it gives it nothing.</summary>
    internal virtual double[]? PressuresOf(int node) => null;

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

/// <summary>The fluid: density in kg/m³, dynamic viscosity in Pa s.</summary>
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

    /// <inheritdoc />
    internal override double[]? PressuresOf(int node) => node == Place ? pressure : null;
}

/// <summary>What is drawn at a junction, m³/s.</summary>
internal sealed class DrawColumn(int node, double[] draw) : BatchColumn(node)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count) =>
        work.SetDraw(Place, Load<T>(draw, first, count));
}

/// <summary>The settings of a link: one column each.</summary>
internal sealed class SettingColumn(int link, double[][] settings) : BatchColumn(link)
{
    /// <inheritdoc />
    internal override void Apply<T>(NetworkWork<T> work, int first, int count)
    {
        Span<T> here = work.Settings.AsSpan(0, settings.Length);
        for (int k = 0; k < here.Length; k++)
        {
            here[k] = Load<T>(settings[k], first, count);
        }

        work.Set(Place, here);
    }
}
