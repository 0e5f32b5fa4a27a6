using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A caller's law, and its starting flow.</summary>
internal sealed class CustomSettings<TLaw>(TLaw law, double usual) : LawSettings
    where TLaw : struct, IFlowLaw
{
    internal readonly TLaw Caller = law;

    /// <summary>m³/s.</summary>
    internal readonly double Usual = usual;

    /// <inheritdoc />
    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, CustomLaw<T, TLaw>>(ends, parts);

    /// <summary>Where the law falls there may be other states.</summary>
    /// <inheritdoc />
    internal override void CheckTrespass(NetworkWork<Real> work, int link, double tolerance)
    {
        if (!(work.Trespass(link).Value > tolerance))
        {
            return;
        }

        string name = work.Plan.Links[link].Name;
        string flow = NetworkVerdict.LitersPerHour(work.Flow[link].Value);
        throw new NoSolutionException(
            RefusalCode.LawUnusable,
            NetworkVerdict.Sought,
            $"The loss of '{name:part}' falls as its flow of {flow:flow} rises, so that this need not be the only state.",
            name,
            double.NaN,
            (int)work.Iterations.Value
        );
    }
}
