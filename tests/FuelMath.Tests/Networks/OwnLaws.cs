using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>Laws as callers write them: right ones, and each wrong in its own way.</summary>
internal static class OwnLaws
{
    /// <summary>a mu Q + b rho Q|Q|, as a filter.</summary>
    internal readonly struct Porous(double linear, double square) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> =>
            (linear * at.Viscosity * at.Flow) + (square * at.Density * at.Flow * T.Abs(at.Flow));
    }

    /// <summary>Passages in a row, as straight hoses: each asks for a friction factor.</summary>
    internal readonly struct Passages(double length, double bore, double roughness, int count) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T>
        {
            T loss = T.Of(0);
            for (int i = 0; i < count; i++)
            {
                // Each half as wide again as the last.
                T wide = T.Of(bore * (1 + (0.5 * i)));
                T velocity = Friction.Velocity(at.Flow, wide);
                T reynolds = Friction.Reynolds(velocity, wide, at.Density, at.Viscosity);
                T factor = at.FrictionFactor(reynolds, roughness / wide);
                loss += factor * (length / wide) * at.Density * velocity * T.Abs(velocity) / 2;
            }

            return loss;
        }
    }

    /// <summary>A square law that falls in a narrow stretch, between the flows that it is tried at.</summary>
    internal readonly struct Notched(double flow) : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T>
        {
            T share = at.Flow / flow;
            T off = (share - 1) / 0.01;
            return 1e5 * ((share * T.Abs(share)) + (0.05 * T.Exp(-(off * off))) - (0.05 * Math.Exp(-1e4)));
        }
    }

    internal readonly struct Offset : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => (1e9 * at.Flow) + 1;
    }

    internal readonly struct Falling : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => (1e9 * at.Flow) - (1e14 * at.Flow * T.Abs(at.Flow));
    }

    internal readonly struct Flat : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => 0 * at.Flow;
    }

    internal readonly struct Unbounded : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => at.Flow / T.Of(0);
    }

    /// <summary>Falls in thick fluid only.</summary>
    internal readonly struct ThinOnly : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => (1e9 - (1e12 * at.Viscosity)) * at.Flow;
    }

    /// <summary>Looks at a value, so that lanes go one way together.</summary>
    internal readonly struct Branching : IFlowLaw
    {
        public T Loss<T>(in FlowPoint<T> at)
            where T : struct, IScalar<T> => T.All(T.Less(at.Flow, T.Of(0))) ? 2e9 * at.Flow : 1e9 * at.Flow;
    }
}
