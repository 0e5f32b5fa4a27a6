using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A smooth curve through given points without overshoot: a shape-preserving cubic.</summary>
/// <remarks>
/// <para>
/// Between two points the curve stays between their values, so that rising data give a rising curve and a flat part
/// stays flat. The slope at a point is the weighted harmonic mean of its two neighbors' slopes, and zero where the data
/// turn. Two points give a straight line.
/// </para>
/// <para>
/// Source: [Fritsch-Carlson-1980] (the conditions), [Fritsch-Butland-1984] (the slopes inside), [Moler-2004] section
/// 3.4 (the slopes at the ends).
/// </para>
/// <para>The numbers have no units of their own: the owner of the curve states those of its axes.</para>
/// </remarks>
/// <seealso href="../guide/tables.html">Tables</seealso>
public sealed class Curve
{
    private readonly Piece[] pieces;
    private readonly double[] x;
    private readonly double[] y;

    /// <summary>Builds the curve.</summary>
    /// <param name="name">The name of the curve, which refusals print; not blank.</param>
    /// <param name="axis">
    /// The name of <paramref name="x"/> with its unit, for example <c>voltage (V)</c>; not blank.
    /// </param>
    /// <param name="x">The abscissas of the points; two or more finite numbers, each greater than the last.</param>
    /// <param name="y">The value at each abscissa; finite.</param>
    /// <param name="outside">The behavior beyond the ends.</param>
    /// <exception cref="ArgumentException">A name is blank, or the points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="outside"/> is not a defined value.</exception>
    public Curve(string name, string axis, IEnumerable<double> x, IEnumerable<double> y, OutsideRange outside)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        Name = Guard.Name(name);
        Axis = Guard.Name(axis);
        Outside = TableChecks.Known(outside);
        this.x = [.. x];
        this.y = [.. y];
        if (!TableChecks.MakeACurve(this.x, this.y))
        {
            // Names the check that failed, and where.
            TableChecks.Axis(this.x, 2, $"{name}: {axis}", nameof(x));
            TableChecks.Same(this.x.Length, this.y.Length, name, nameof(y));
            Guard.AllFinite(this.y, $"{name}: the values", nameof(y));
        }

        pieces = MonotoneCubic.Pieces(this.x, this.y);
        TableChecks.Drawable(pieces, name, nameof(y));
    }

    /// <summary>A curve between two others, through points that they proved, with slopes at them.</summary>
    internal Curve(string name, string axis, double[] x, double[] y, double[] slopes)
    {
        (Name, Axis, Outside, this.x, this.y) = (name, axis, OutsideRange.Refuse, x, y);
        pieces = new Piece[x.Length + 1];
        MonotoneCubic.Fill(x, y, slopes, pieces);
    }

    /// <summary>The name of the curve.</summary>
    public string Name { get; }

    /// <summary>The name of its axis, with its unit.</summary>
    public string Axis { get; }

    /// <summary>The behavior beyond the ends.</summary>
    public OutsideRange Outside { get; }

    /// <summary>The abscissas of the points.</summary>
    public ImmutableArray<double> Knots => ImmutableCollectionsMarshal.AsImmutableArray(x);

    /// <summary>The values at the points.</summary>
    public ImmutableArray<double> Values => ImmutableCollectionsMarshal.AsImmutableArray(y);

    /// <summary>The abscissa of the first point.</summary>
    public double First => x[0];

    /// <summary>The abscissa of the last point.</summary>
    public double Last => x[^1];

    /// <summary>The pieces between the points, with a straight one before the first point and one after the last.</summary>
    internal ReadOnlySpan<Piece> Pieces => pieces;

    /// <summary>Whether each value is greater than the one before.</summary>
    public bool IsRising => TableChecks.Ordered(y, 1);

    /// <summary>Whether each value is less than the one before.</summary>
    public bool IsFalling => TableChecks.Ordered(y, -1);

    /// <summary>Evaluates the curve.</summary>
    /// <param name="x">The abscissa.</param>
    /// <returns>The value there.</returns>
    /// <exception cref="OutsideTableException"><paramref name="x"/> lies beyond the ends and the curve refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="x"/> is not finite, or so far out that the value is not.</exception>
    public double At(double x)
    {
        double at = TableChecks.Place(this.x, x, Outside, Name, Axis, nameof(x));
        return TableChecks.Number(pieces[MonotoneCubic.PieceAt(this.x, at)].At(at), x, Name, nameof(x));
    }

    /// <summary>The slope of the curve.</summary>
    /// <param name="x">The abscissa.</param>
    /// <returns>The derivative there; zero beyond the ends when they are held.</returns>
    /// <exception cref="OutsideTableException"><paramref name="x"/> lies beyond the ends and the curve refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="x"/> is not finite, or so far out that the slope is not.</exception>
    public double Slope(double x)
    {
        double at = TableChecks.Place(this.x, x, Outside, Name, Axis, nameof(x));
        return Outside == OutsideRange.HoldEnds && (x < First || x > Last)
            ? 0
            : TableChecks.Number(pieces[MonotoneCubic.PieceAt(this.x, at)].Slope(at), x, Name, nameof(x));
    }

    /// <summary>Finds where the curve takes a value. Only for a monotonic curve.</summary>
    /// <param name="y">The value.</param>
    /// <returns>Where the curve takes it.</returns>
    /// <remarks>A curve that holds its ends takes no value beyond theirs, so such a value is refused too.</remarks>
    /// <exception cref="InvalidOperationException">The curve neither rises throughout nor falls throughout.</exception>
    /// <exception cref="OutsideTableException">The curve does not take <paramref name="y"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="y"/> is not finite.</exception>
    public double Inverse(double y)
    {
        Guard.Finite(y);
        bool rising = IsRising;
        if (!rising && !IsFalling)
        {
            throw new RefusedOperationException(
                RefusalCode.NotMonotone,
                $"{Name:part}: only a curve whose values rise throughout or fall throughout can be read backwards."
            );
        }

        double low = Math.Min(this.y[0], this.y[^1]);
        double high = Math.Max(this.y[0], this.y[^1]);
        double target = Guard.IsWithin(y, low, high) ? Math.Clamp(y, low, high) : y;
        int piece = MonotoneCubic.PieceOfValue(this.y, target, rising);
        bool outside = piece == 0 || piece == x.Length;
        if (!outside && target == this.y[piece])
        {
            // Where the curve ends level, a rounding of the value moves the place by its square or cube root.
            return x[piece];
        }

        double at = MonotoneCubic.Solve(pieces[piece], target, outside ? double.NaN : x[piece] - x[piece - 1]);
        return (outside && Outside != OutsideRange.Extend) || !double.IsFinite(at)
            ? throw new OutsideTableException(Name, $"value over {Axis}", y, low, high)
            : at;
    }

    /// <summary>Evaluates the curve in any scalar, without branching, for solvers.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="x">The abscissa.</param>
    /// <returns>The value there; a <see cref="Dual{T}"/> carries its slope.</returns>
    /// <remarks>
    /// Beyond the ends it is <b>always extrapolated linearly</b> with the end slope, whatever <see cref="Outside"/>
    /// says, so that Newton iterates may lie there; the solver checks the range of its solution afterwards. Inside it
    /// is bit-identical to <see cref="At"/>. The cost grows with the number of points.
    /// </remarks>
    public T Read<T>(T x)
        where T : struct, IScalar<T>
    {
        Piece first = pieces[0];
        T origin = T.Of(first.X0);
        T c0 = T.Of(first.C0);
        T c1 = T.Of(first.C1);
        T c2 = T.Of(first.C2);
        T c3 = T.Of(first.C3);
        for (int i = 1; i < pieces.Length; i++)
        {
            ref readonly Piece piece = ref pieces[i];
            Mask<T> before = T.Less(x, T.Of(this.x[i - 1]));
            origin = T.Select(before, origin, T.Of(piece.X0));
            c0 = T.Select(before, c0, T.Of(piece.C0));
            c1 = T.Select(before, c1, T.Of(piece.C1));
            c2 = T.Select(before, c2, T.Of(piece.C2));
            c3 = T.Select(before, c3, T.Of(piece.C3));
        }

        T t = x - origin;
        return c0 + (t * (c1 + (t * (c2 + (t * c3)))));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Knots.Length} points");
}
