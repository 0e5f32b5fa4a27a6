using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A measured loss, mirrored at zero flow and converted to another fluid: see <see cref="LossTable"/>.
/// </summary>
internal struct LossTableLaw<T> : ILinkLaw<LossTableLaw<T>, T>
    where T : struct, IScalar<T>
{
    private PieceTable<T> table;
    private T stretch;
    private T lift;
    private T first;
    private T usual;
    private T greatest;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <summary>The greatest flow that the table covers in this fluid, m³/s.</summary>
    internal readonly T GreatestFlow => greatest;

    /// <inheritdoc />
    public void Load(LawSettings settings) => table.Load(((LossTableSettings)settings).Pieces);

    /// <inheritdoc />
    public void Carry(LawSettings settings, in Surroundings<T> around)
    {
        var measured = (LossTableSettings)settings;

        // At the same Reynolds number flows are proportional to kinematic viscosity, and losses to density times flow
        // squared.
        stretch = measured.KinematicViscosity * around.Density / around.Viscosity;
        lift = around.Density / (measured.Density * (stretch * stretch));
        greatest = table.End / stretch;
        first = 0.5 * greatest;
        usual = lift * table.AtEnd / greatest;
    }

    /// <inheritdoc />
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        Dual<T> loss = lift * table.At(stretch * Dual<T>.Abs(flow));
        return new(Dual<T>.Select(Dual<T>.Less(flow, Dual<T>.Of(0)), -loss, loss));
    }

    /// <summary>The flow in excess of the table.</summary>
    public static T Trespass(ref LossTableLaw<T> law, T flow) => T.Max(T.Abs(flow) - law.greatest, T.Of(0));
}
