using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A whole line, piece by piece: its joints, its bill of materials, and its hydraulic loss.</summary>
/// <remarks>
/// Caution: a line without findings is a plan, not a proof. Relieve the pressure before opening a line, and test it for
/// tightness before the first start.
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/LineExamples.cs" region="Line" />
/// </example>
/// <seealso href="../guide/lines.html">Lines</seealso>
public sealed partial class LinePlan : ILineOrigin
{
    /// <summary>Creates a line.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="pieces">Its pieces from start to end, two or more; ports only at its ends.</param>
    /// <exception cref="ArgumentException">The name is blank or the pieces do not form a line.</exception>
    /// <exception cref="ArgumentNullException">The list or a piece is null.</exception>
    public LinePlan(string name, IEnumerable<Piece> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        Name = Guard.Name(name);
        Pieces = [.. pieces];
        if (Pieces.Length < 2)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A line must have {2:least} pieces or more; {Pieces.Length:value} given.",
                nameof(pieces),
                name
            );
        }

        var joints = ImmutableArray.CreateBuilder<Joint>(Pieces.Length - 1);
        for (int i = 0; i + 1 < Pieces.Length; i++)
        {
            ArgumentNullException.ThrowIfNull(Pieces[i], nameof(pieces));
            ArgumentNullException.ThrowIfNull(Pieces[i + 1], nameof(pieces));
            joints.Add(
                Pieces[i].End is { } end && Pieces[i + 1].Start is { } start
                    ? Joint.Between(end, start)
                    : throw new RefusedArgumentException(
                        RefusalCode.PortNotAtEnd,
                        $"A port must stand at an end of the line and face inwards; '{(Pieces[i].End is null ? Pieces[i] : Pieces[i + 1]).Name:part}' does not.",
                        nameof(pieces)
                    )
            );
        }

        Joints = joints.ToImmutable();
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its pieces, from start to end.</summary>
    public ImmutableArray<Piece> Pieces { get; }

    /// <summary>The joints between them, one less than pieces.</summary>
    public ImmutableArray<Joint> Joints { get; }

    /// <summary>Whether every joint seals.</summary>
    public bool AllSeal => Joints.All(j => j.Verdict == Joint.Outcome.Seals);

    /// <summary>
    /// The bill of materials: hoses by stock and length, the fittings on them, adapters. Ports are not included.
    /// </summary>
    public ImmutableArray<BillRow> Bill =>
        [
            .. Hoses
                // Lengths equal to a micrometer are grouped: conversion from other units changes the last bits.
                .GroupBy(h => (Stock: h.Stock.Name, Cut: Math.Round(h.CutLength.InSi(), 6)))
                .Select(g => new BillRow(g.Key.Stock, g.Count(), g.First().CutLength)),
            .. Hoses
                .SelectMany(h => new[] { h.First.Loss.Name, h.Second.Loss.Name })
                .Concat(Pieces.OfType<AdapterPiece>().Select(p => p.Name))
                .GroupBy(n => n, StringComparer.Ordinal)
                .Select(g => new BillRow(g.Key, g.Count(), null)),
        ];

    /// <summary>The enclosed volume of its hoses, which priming fills and flushing must replace, in m³.</summary>
    public Volume EnclosedVolume => SiUnits.Volume(Hoses.Sum(h => h.Hose.EnclosedVolume.InSi()));

    private IEnumerable<HoseAssembly> Hoses => Pieces.OfType<HosePiece>().Select(p => p.Hose);

    private IEnumerable<Fitting> Adapters => Pieces.OfType<AdapterPiece>().Select(p => p.Loss);

    /// <summary>Checks every joint, and the basis of the loss.</summary>
    /// <returns>The findings, in the order of the line.</returns>
    public ImmutableArray<Finding> Check() => LineFindings.Of(this);

    /// <summary>
    /// The pressure loss from its start to its end at equal elevation: friction of the hoses and all fittings.
    /// </summary>
    /// <param name="flow">Volume flow; the loss has its sign.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fuel; greater than zero.</param>
    /// <returns>The loss, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="density"/> or <paramref name="viscosity"/> is not greater than zero, or <paramref name="flow"/>
    /// is not finite.
    /// </exception>
    public Pressure LossAt(VolumeFlow flow, Density density, DynamicViscosity viscosity) =>
        SiUnits.Pressure(
            Hoses.Sum(h => h.Hose.LossAt(flow, density, viscosity).InSi())
                + Adapters.Sum(a => a.LossAt(flow, density).InSi())
        );

    /// <summary>
    /// The whole line as one hose, for a fuel path: the sum of lengths, and all coefficients converted to its bore.
    /// </summary>
    /// <param name="source">Where it comes from, for the hose.</param>
    /// <returns>The hose.</returns>
    /// <exception cref="InvalidOperationException">It has no hose, or hoses of different bores or walls.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The sum of its lengths or coefficients is of a size that no hose can have: fittings far narrower than the hose.
    /// </exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Hose ToHose(DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        if (!Hoses.Any())
        {
            throw new RefusedOperationException(
                RefusalCode.HoseNeeded,
                $"Line '{Name:part}' has no hose, so that it can't be one: use its fittings."
            );
        }

        Hose like = Hoses.First().Hose;
        if (Hoses.Select(h => (h.Hose.Bore.InSi(), h.Hose.Roughness.InSi())).Distinct().Skip(1).Any())
        {
            throw new RefusedOperationException(
                RefusalCode.NotAlike,
                $"Line '{Name:part}' has hoses of different bores or walls, whose friction does not add up to that of one: give them as lines of their own."
            );
        }

        double coefficient =
            Hoses.Sum(h => h.Hose.LossCoefficient.InSi())
            + new FittingSeries(Adapters).CoefficientFor(like.Bore).InSi();
        return new(
            Name,
            SiUnits.Length(Hoses.Sum(h => h.Hose.Length.InSi())),
            like.Bore,
            like.Roughness,
            SiUnits.Ratio(coefficient),
            source
        );
    }

    /// <summary>Its parts as lines of a network in series, so that hoses of different bores are possible.</summary>
    /// <param name="from">The node it comes from; not blank.</param>
    /// <param name="to">The node it goes to; not blank, a different one.</param>
    /// <returns>
    /// One line for each hose and for each adapter with a loss, named after this one with a number. The nodes between
    /// them have the name of the line before; add each as a junction.
    /// </returns>
    /// <exception cref="InvalidOperationException">It has no loss.</exception>
    /// <exception cref="ArgumentException">A node is blank, or both are the same.</exception>
    public ImmutableArray<Line> ToLines(string from, string to)
    {
        FlowPart[] losing = [.. Pieces.Select(p => p.Losing).OfType<FlowPart>().Where(p => p.WhyNoLine is null)];
        if (losing.Length == 0)
        {
            throw Nothing();
        }

        string NameOf(int i) => FormattableString.Invariant($"{Name} {i + 1}");
        return
        [
            .. losing.Select(
                (part, i) =>
                {
                    var line = new Line(
                        NameOf(i),
                        i == 0 ? from : NameOf(i - 1),
                        i + 1 == losing.Length ? to : NameOf(i),
                        part
                    );
                    return i == 0 ? line.MadeFrom(this) : line;
                }
            ),
        ];
    }

    /// <summary>The whole line as one of a network: the sum of friction and coefficients.</summary>
    /// <param name="from">The node it comes from; not blank.</param>
    /// <param name="to">The node it goes to; not blank, a different one.</param>
    /// <returns>The line, named after this one.</returns>
    /// <exception cref="InvalidOperationException">It has hoses of different bores or walls, or no loss.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The sum of its lengths or coefficients is of a size that no part can have.</exception>
    /// <exception cref="ArgumentException">A node is blank, or both are the same.</exception>
    public Line ToLine(string from, string to)
    {
        if (Hoses.Any())
        {
            return new Line(Name, from, to, ToHose(Hoses.First().Hose.Source)).MadeFrom(this);
        }

        Fitting? widest = Adapters.MaxBy(a => a.Bore.InSi());
        Ratio sum = widest is null ? SiUnits.Ratio(0) : new FittingSeries(Adapters).CoefficientFor(widest.Bore);
        return sum.InSi() > 0
            ? new Line(Name, from, to, new PlainFitting(widest!.Bore, sum)).MadeFrom(this)
            : throw Nothing();
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Pieces.Length} pieces");

    private InvalidOperationException Nothing() =>
        new($"Line '{Name}' loses nothing, so that it is no line of a network: join its two nodes into one.");
}
