using FuelMath.Formulas;

namespace FuelMath;

/// <summary>q = min(commanded, C sqrt(dp)) into a space, nothing backwards: the mean draw of pulsed injectors.</summary>
internal sealed class CappedSettings(double coefficient, double commanded) : LawSettings
{
    /// <summary>Density of the fluid of its coefficient, kg/m³; none where it is set for each fluid.</summary>
    internal double MeasuredDensity { get; init; }

    /// <summary>m³/s per root of Pa.</summary>
    internal readonly double Coefficient = coefficient;

    /// <summary>m³/s.</summary>
    internal readonly double Commanded = commanded;

    internal override bool IsOneWay => true;

    internal override bool Joins => false;

    internal override bool NeedsSpace => true;

    /// <summary>C and the commanded flow.</summary>
    internal override int SettingCount => 2;

    internal override SettingKind Settable => SettingKind.Command;

    internal override void Write(Span<double> settings) => (settings[0], settings[1]) = (Coefficient, Commanded);

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        new LinkGroup<T, CappedLaw<T>>(ends, parts);

    /// <summary>Shut by command it takes any pressure; a commanded flow needs what passes it, or more.</summary>
    internal override double ErrorIn(NetworkWork<Real> work, int link, double noFlow) =>
        work.Law<CappedLaw<Real>>(link).Commanded.Value == 0 ? 0
        : work.ConditionOf(link, noFlow) != Network.LineCondition.Commanded ? base.ErrorIn(work, link, noFlow)
        : Math.Max(0, -work.SurplusAt(link, work.Flow[link]).Pressure.Value);
}
