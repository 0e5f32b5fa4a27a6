using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A running pump of any law.</summary>
internal abstract class PumpSettings : LawSettings
{
    internal override bool IsOneWay => true;

    internal override bool IsPump => true;

    internal override SettingKind Settable => SettingKind.Curve;

    /// <summary>The curve of a set of such pumps: stretching both axes, each law keeps its form.</summary>
    internal abstract PumpSettings Set(int inParallel, int inSeries);

    /// <summary>What keeps it from standing in the place of a network's own pump, said of it; null where it fits.</summary>
    internal abstract string? WhyUnlike(LawSettings network);

    /// <summary>What a pump does; without flow it is dead-headed if it would deliver at any lower pressure behind it.</summary>
    /// <inheritdoc cref="ILinkLaw{TLaw, T}.Condition" />
    internal static T Condition<TLaw, T>(ref TLaw law, T flow, T up, T down, T noFlow)
        where TLaw : struct, ILinkLaw<TLaw, T>
        where T : struct, IScalar<T>
    {
        T running = T.Of((int)Network.LineCondition.Running);
        Mask<T> delivers = T.Less(noFlow, flow);
        if (T.All(delivers))
        {
            return running;
        }

        T memory = default;
        Balance<T> still = law.At(Dual<T>.Variable(T.Of(0)), up, down, T.Of(Stiff.Reverse), ref memory);
        T surplus = (still.Up * up) - (still.Down * down) - still.Loss.Number;
        T limit = NetworkWork<T>.PressureLimit(T.Max(T.Abs(up), T.Abs(down)));
        T stands = T.Select(
            T.Less(surplus, -limit),
            T.Of((int)Network.LineCondition.Stalled),
            T.Of((int)Network.LineCondition.DeadHeaded)
        );
        return T.Select(delivers, running, stands);
    }
}
