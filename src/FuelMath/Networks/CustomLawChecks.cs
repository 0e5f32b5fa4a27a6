using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The checks of a caller's law.</summary>
internal static class CustomLawChecks
{
    private const int Samples = 20;

    /// <summary>
    /// Relative tolerance between lanes and plain numbers: their logarithm and power round differently.
    /// </summary>
    private const double SameInLanes = 1e-12;

    // The range of fluids in a fuel path, from hot to cold: kg/m³, Pa s.
    private const double LeastDensity = 600;
    private const double GreatestDensity = 1000;
    private const double LeastViscosity = 2e-4;
    private const double GreatestViscosity = 5e-3;

    /// <summary>Refuses a law that can't be solved.</summary>
    /// <exception cref="ArgumentException">It can't.</exception>
    internal static void All<TLaw>(string name, TLaw law, double usualFlow)
        where TLaw : struct, IFlowLaw
    {
        foreach (double density in (ReadOnlySpan<double>)[LeastDensity, GreatestDensity])
        {
            foreach (double viscosity in (ReadOnlySpan<double>)[LeastViscosity, GreatestViscosity])
            {
                Rises(name, law, usualFlow, density, viscosity);
                IsSameIn<TLaw, Lane>(name, law, usualFlow, density, viscosity);
                IsSameIn<TLaw, WideLane>(name, law, usualFlow, density, viscosity);
            }
        }
    }

    private static void Rises<TLaw>(string name, TLaw law, double usualFlow, double density, double viscosity)
        where TLaw : struct, IFlowLaw
    {
        double last = double.NegativeInfinity;
        for (int i = -Samples; i <= Samples; i++)
        {
            double flow = FlowAt(usualFlow, i);
            Dual<Real> loss = law.Loss(
                new FlowPoint<Dual<Real>>(
                    Dual<Real>.Variable(new Real(flow)),
                    Dual<Real>.Of(density),
                    Dual<Real>.Of(viscosity)
                )
            );
            (double now, double slope) = (loss.Number.Value, loss.Rate.Value);
            string? wrong =
                !double.IsFinite(now) || !double.IsFinite(slope) ? "be finite, and so must its slope"
                : i == 0 && now != 0 ? "be zero at no flow"
                : !(now > last && slope >= 0) ? "rise with flow"
                : null;
            if (wrong is not null)
            {
                throw new RefusedArgumentException(
                    RefusalCode.LawUnusable,
                    $"The loss of '{name:part}' must {wrong:rule}; at {Liters(flow):flow} it is {new Amount(now, "Pa"):loss}, with a slope of {new Amount(slope, "Pa s/m³"):slope}, at {new Amount(density, "kg/m³"):density} and {new Amount(viscosity, "Pa s"):viscosity}.",
                    nameof(law)
                );
            }

            last = now;
        }
    }

    /// <summary>Refuses a law that branches on a value: it gives other results for several numbers at once.</summary>
    private static void IsSameIn<TLaw, T>(string name, TLaw law, double usualFlow, double density, double viscosity)
        where TLaw : struct, IFlowLaw
        where T : struct, ILane<T>
    {
        Span<double> flows = stackalloc double[T.Count];
        Span<double> losses = stackalloc double[T.Count];
        for (int i = 0; i <= Samples; i++)
        {
            for (int n = 0; n < T.Count; n++)
            {
                // Both signs and distant sizes in one vector.
                flows[n] = FlowAt(usualFlow, n % 2 == 0 ? i : -((i + n) % (Samples + 1)));
            }

            T.Store(law.Loss(new FlowPoint<T>(T.Load(flows), T.Of(density), T.Of(viscosity))), losses);
            for (int n = 0; n < T.Count; n++)
            {
                double alone = law.Loss(
                    new FlowPoint<Real>(new Real(flows[n]), new Real(density), new Real(viscosity))
                ).Value;
                if (!(Math.Abs(losses[n] - alone) <= SameInLanes * Math.Abs(alone)))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.LawUnusable,
                        $"The loss of '{name:part}' must not branch on a value, nor remember one; at {Liters(flows[n]):flow} it is {new Amount(alone, "Pa"):alone} alone and {new Amount(losses[n], "Pa"):amongOthers} among others.",
                        nameof(law)
                    );
                }
            }
        }
    }

    /// <summary>From zero to a hundred times the usual flow, in either direction.</summary>
    private static double FlowAt(double usual, int sample) =>
        sample == 0 ? 0 : Math.Sign(sample) * usual * Math.Pow(10, (4.0 * Math.Abs(sample) / Samples) - 2);

    private static string Liters(double flow) => NetworkVerdict.LitersPerHour(flow);
}
