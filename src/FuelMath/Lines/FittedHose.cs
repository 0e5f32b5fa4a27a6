using System.Collections.Immutable;
using FuelMath.Fittings;
using FuelMath.Hoses;
using FuelMath.Internal;
using FuelMath.Networks;

namespace FuelMath.Lines;

/// <summary>A hose with the fittings on it: neither knows the other.</summary>
/// <remarks>The fittings' coefficients are carried to the bore of the hose and added to its own.</remarks>
internal sealed class FittedHose(Hose hose, ImmutableArray<Fitting> fittings) : FlowPart
{
    /// <inheritdoc />
    internal override LinkPart Law => hose.LawWith(new FittingSeries(fittings).CoefficientFor(hose.Bore).InSi());
}
