namespace FuelMath.Formulas;

/// <summary>A scalar that records its working: the number, the formula in symbols, and the inserted values.</summary>
/// <remarks>
/// <para>
/// The number has the same bits as that of <see cref="Real"/>. A product of equal factors is shown as a power, and
/// where a formula selects one of two sides, the working shows the selected side and the condition. The root of an
/// implicit law is shown as a function of the law's parameters, named after the law.
/// </para>
/// <para>
/// Each operation allocates memory: use it for an evaluation that is read, not in a loop. The default value is the
/// constant zero.
/// </para>
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public readonly struct Traced : IScalar<Traced>
{
    private readonly TracedNode? node;

    private Traced(TracedNode node) => this.node = node;

    /// <summary>The number.</summary>
    public double Value => Node.Value;

    internal TracedNode Node => node ?? TracedNode.Zero;

    /// <summary>An input of the formula.</summary>
    /// <param name="symbol">What it is called in the working.</param>
    /// <param name="value">Its value in the SI unit that the symbol names; finite.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="symbol"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
    public static Traced Input(Symbol symbol, double value)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        return new(TracedNode.Input(symbol, Guard.Finite(value)));
    }

    /// <summary>Gives the working of this number.</summary>
    /// <returns>The inputs and the named steps that led here.</returns>
    public Working ToWorking() => new(Node, null, null);

    /// <inheritdoc />
    public static Traced Of(double value) => new(TracedNode.Constant(value));

    /// <inheritdoc />
    public static Traced operator +(Traced a, Traced b) => new(TracedNode.Sum("+", a.Node, b.Node, a.Value + b.Value));

    /// <inheritdoc />
    public static Traced operator +(Traced a, double b) =>
        new(TracedNode.Sum("+", a.Node, TracedNode.Constant(b), a.Value + b));

    /// <inheritdoc />
    public static Traced operator +(double a, Traced b) =>
        new(TracedNode.Sum("+", TracedNode.Constant(a), b.Node, a + b.Value));

    /// <inheritdoc />
    public static Traced operator -(Traced a, Traced b) => new(TracedNode.Sum("-", a.Node, b.Node, a.Value - b.Value));

    /// <inheritdoc />
    public static Traced operator -(Traced a, double b) =>
        new(TracedNode.Sum("-", a.Node, TracedNode.Constant(b), a.Value - b));

    /// <inheritdoc />
    public static Traced operator -(double a, Traced b) =>
        new(TracedNode.Sum("-", TracedNode.Constant(a), b.Node, a - b.Value));

    /// <inheritdoc />
    public static Traced operator *(Traced a, Traced b) => new(TracedNode.Product(a.Node, b.Node, a.Value * b.Value));

    /// <inheritdoc />
    public static Traced operator *(Traced a, double b) =>
        new(TracedNode.Product(a.Node, TracedNode.Constant(b), a.Value * b));

    /// <inheritdoc />
    public static Traced operator *(double a, Traced b) =>
        new(TracedNode.Product(TracedNode.Constant(a), b.Node, a * b.Value));

    /// <inheritdoc />
    public static Traced operator /(Traced a, Traced b) => new(TracedNode.Quotient(a.Node, b.Node, a.Value / b.Value));

    /// <inheritdoc />
    public static Traced operator /(Traced a, double b) =>
        new(TracedNode.Quotient(a.Node, TracedNode.Constant(b), a.Value / b));

    /// <inheritdoc />
    public static Traced operator /(double a, Traced b) =>
        new(TracedNode.Quotient(TracedNode.Constant(a), b.Node, a / b.Value));

    /// <inheritdoc />
    public static Traced operator -(Traced value) => new(TracedNode.Negative(value.Node));

    /// <inheritdoc />
    public static Traced Sqrt(Traced x) => new(TracedNode.Call("sqrt", x.Node, null, Math.Sqrt(x.Value)));

    /// <inheritdoc />
    public static Traced Exp(Traced x) => new(TracedNode.Call("exp", x.Node, null, Math.Exp(x.Value)));

    /// <inheritdoc />
    public static Traced Log(Traced x) => new(TracedNode.Call("ln", x.Node, null, Math.Log(x.Value)));

    /// <inheritdoc />
    public static Traced Pow(Traced x, double exponent) =>
        new(TracedNode.Power(x.Node, exponent, Math.Pow(x.Value, exponent)));

    /// <inheritdoc />
    public static Traced Abs(Traced x) => new(TracedNode.Size(x.Node, Math.Abs(x.Value)));

    /// <inheritdoc />
    public static Traced Min(Traced a, Traced b) => Select(Less(b, a), b, a);

    /// <inheritdoc />
    public static Traced Max(Traced a, Traced b) => Select(Less(a, b), b, a);

    /// <inheritdoc />
    public static Mask<Traced> Less(Traced a, Traced b) => new(new(TracedNode.Less(a.Node, b.Node)));

    /// <inheritdoc />
    public static Mask<Traced> And(Mask<Traced> a, Mask<Traced> b) =>
        new(new(TracedNode.Both(a.Bits.Node, b.Bits.Node)));

    /// <inheritdoc />
    public static Mask<Traced> Or(Mask<Traced> a, Mask<Traced> b) =>
        new(new(TracedNode.Either(a.Bits.Node, b.Bits.Node)));

    /// <inheritdoc />
    public static bool All(Mask<Traced> mask) => mask.Bits.Node.Holds;

    /// <inheritdoc />
    public static Traced Select(Mask<Traced> where, Traced then, Traced otherwise)
    {
        TracedNode condition = where.Bits.Node;
        return new(TracedNode.Chosen((condition.Holds ? then : otherwise).Node, condition));
    }

    /// <inheritdoc />
    public static Traced Implicit<TLaw>(Traced a, Traced b)
        where TLaw : struct, IImplicitLaw =>
        new(
            TracedNode.Call(
                typeof(TLaw).Name,
                a.Node,
                b.Node,
                Real.Implicit<TLaw>(new Real(a.Value), new Real(b.Value)).Value
            )
        );

    /// <inheritdoc />
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Traced Step(Traced value, Symbol symbol, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        ArgumentNullException.ThrowIfNull(source);
        return new(TracedNode.Named(value.Node, symbol, source));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Value}");

    /// <summary>An input in the unit in which a reader gave it.</summary>
    internal static Traced Input(Symbol symbol, double value, double given, TracedUnit unit) =>
        new(TracedNode.Input(symbol, Guard.Finite(value), given, unit));

    /// <summary>The working, which ends in a unit that a reader asked for.</summary>
    internal Working ToWorking(TracedUnit? unit) => new(Node, unit, null);
}
