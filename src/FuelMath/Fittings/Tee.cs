using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A tee or a wye: its loss depends on the path through it and on the division of the flow.</summary>
/// <remarks>
/// <para>
/// The coefficient is for the <em>combined</em> velocity in the run's bore. It may be negative: a faster stream drags
/// the slower one along, whose pressure rises. <see cref="ToFitting"/> gives the same loss for a leg's own flow and
/// bore, as a network needs it, at one division of the flow; if the solved division differs, repeat with that one.
/// </para>
/// <para>
/// A y-block whose two outlets leave at equal angles is not in the handbook: take the branch path for both, which is on
/// the safe side. Between 60 and 75 degrees the published formulas are discontinuous.
/// </para>
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed partial class Tee
{
    private const double NarrowestDegrees = 30;
    private const double WidestDegrees = 90;
    private static readonly DataSource Book = new("TP-410", "chapter 2, tees and wyes, with errata");

    private readonly double bore;
    private readonly double branchBore;
    private readonly double areaRatio;
    private readonly double degrees;

    /// <summary>Describes a tee or wye.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="bore">Bore of the run and of the combined leg; greater than zero.</param>
    /// <param name="branchBore">Bore of the branch; greater than zero, not wider than the run.</param>
    /// <param name="branchAngle">Angle between branch and run; 90 degrees for a tee, 30 to 90 allowed.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Tee(string name, Length bore, Length branchBore, Angle branchAngle)
    {
        Name = Guard.Name(name);
        this.bore = Guard.Positive(bore, bore.InSi(), part: name);
        this.branchBore = Guard.Positive(branchBore, branchBore.InSi(), part: name);
        if (this.branchBore > this.bore * (1 + Guard.EdgeTolerance))
        {
            throw Guard.OutOfRange(branchBore, $"not wider than the run, {bore:most}", part: name);
        }

        areaRatio = Math.Min(1, this.branchBore / this.bore * (this.branchBore / this.bore));
        degrees =
            Guard.InRange(
                branchAngle,
                branchAngle.InSi(),
                NarrowestDegrees * Math.PI / 180,
                WidestDegrees * Math.PI / 180,
                SiUnits.Angle,
                part: name
            )
            * 180
            / Math.PI;
        (Bore, BranchBore, BranchAngle) = (bore, branchBore, branchAngle);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Bore of the run and of the combined leg.</summary>
    public Length Bore { get; }

    /// <summary>Bore of the branch.</summary>
    public Length BranchBore { get; }

    /// <summary>Angle between branch and run.</summary>
    public Angle BranchAngle { get; }

    /// <summary>The loss coefficient of a path through it, for the combined velocity in the run's bore.</summary>
    /// <param name="path">The path.</param>
    /// <param name="branchShare">Flow of the branch over combined flow; 0 to 1.</param>
    /// <returns>The coefficient; negative where the other stream raises the pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public Ratio CoefficientAt(Path path, Ratio branchShare)
    {
        Guard.Known(path, part: Name);
        double share = Guard.InRange(branchShare, branchShare.InSi(), 0, 1, SiUnits.Ratio, part: Name);
        return SiUnits.Ratio(Combined(path, share));
    }

    /// <summary>A path through it as a fitting for the flow of that leg alone, at one division of the flow.</summary>
    /// <param name="path">The path; the leg is the run for the run paths and the branch for the branch paths.</param>
    /// <param name="branchShare">Flow of the branch over combined flow; 0 to 1, and the leg must carry some.</param>
    /// <returns>The fitting, for the bore of the leg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, the leg carries no flow, or the coefficient is negative there.
    /// </exception>
    public Fitting ToFitting(Path path, Ratio branchShare)
    {
        Guard.Known(path, part: Name);
        double share = Guard.InRange(branchShare, branchShare.InSi(), 0, 1, SiUnits.Ratio, part: Name);
        bool branch = path is Path.DividingBranch or Path.CombiningBranch;
        double legShare = branch ? share : 1 - share;
        if (legShare <= 0)
        {
            throw Guard.Outside(
                branchShare,
                RefusalCode.NoFlow,
                $"Some flow must go the way {path:path}; at a branch share of {branchShare:value} none does.",
                part: Name
            );
        }

        double combined = Combined(path, share);
        if (combined < 0)
        {
            throw Guard.Outside(
                branchShare,
                RefusalCode.NoLoss,
                $"The way {path:path} must lose pressure to be a fitting; at this share its coefficient is {combined:coefficient}. Leave it out, which is on the safe side.",
                part: Name
            );
        }

        double legBore = branch ? branchBore : bore;
        double ofLeg =
            MinorLoss.CarriedCoefficient(new Real(combined), new Real(bore), new Real(legBore)).Value
            / (legShare * legShare);
        return new(
            $"{Name}, {path}",
            branch ? BranchBore : Bore,
            SiUnits.Ratio(ofLeg),
            Fitting.LossBasis.Published,
            Book
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Bore}, branch {BranchBore} at {BranchAngle}");

    private double Combined(Path path, double share)
    {
        Real q = new(share);
        Real a = new(areaRatio);
        Real coefficient = path switch
        {
            Path.DividingRun => TeeLoss.DividingRun(q, a),
            Path.DividingBranch => TeeLoss.DividingBranch(q, a, degrees),
            Path.CombiningRun => TeeLoss.CombiningRun(q, a, degrees),
            _ => TeeLoss.CombiningBranch(q, a, degrees),
        };
        return coefficient.Value;
    }
}
