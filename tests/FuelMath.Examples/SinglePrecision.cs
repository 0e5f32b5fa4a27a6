using FuelMath.Formulas;

namespace FuelMath.Examples;

#region Reading
/// <summary>A formula read in single precision, as a small controller counts.</summary>
internal readonly struct SinglePrecision(float value) : IScalar<SinglePrecision>
{
    private static readonly SinglePrecision Yes = new(1);

    public float Value { get; } = value;

    public static SinglePrecision Of(double value) => new((float)value);

    public static SinglePrecision operator +(SinglePrecision a, SinglePrecision b) => new(a.Value + b.Value);

    public static SinglePrecision operator -(SinglePrecision a, SinglePrecision b) => new(a.Value - b.Value);

    public static SinglePrecision operator *(SinglePrecision a, SinglePrecision b) => new(a.Value * b.Value);

    public static SinglePrecision operator /(SinglePrecision a, SinglePrecision b) => new(a.Value / b.Value);

    public static SinglePrecision operator -(SinglePrecision value) => new(-value.Value);

    public static SinglePrecision operator +(SinglePrecision a, double b) => a + Of(b);

    public static SinglePrecision operator +(double a, SinglePrecision b) => Of(a) + b;

    public static SinglePrecision operator -(SinglePrecision a, double b) => a - Of(b);

    public static SinglePrecision operator -(double a, SinglePrecision b) => Of(a) - b;

    public static SinglePrecision operator *(SinglePrecision a, double b) => a * Of(b);

    public static SinglePrecision operator *(double a, SinglePrecision b) => Of(a) * b;

    public static SinglePrecision operator /(SinglePrecision a, double b) => a / Of(b);

    public static SinglePrecision operator /(double a, SinglePrecision b) => Of(a) / b;

    public static SinglePrecision Sqrt(SinglePrecision x) => new(MathF.Sqrt(x.Value));

    public static SinglePrecision Exp(SinglePrecision x) => new(MathF.Exp(x.Value));

    public static SinglePrecision Log(SinglePrecision x) => new(MathF.Log(x.Value));

    public static SinglePrecision Pow(SinglePrecision x, double exponent) => new(MathF.Pow(x.Value, (float)exponent));

    public static SinglePrecision Abs(SinglePrecision x) => new(MathF.Abs(x.Value));

    public static SinglePrecision Min(SinglePrecision a, SinglePrecision b) => new(MathF.Min(a.Value, b.Value));

    public static SinglePrecision Max(SinglePrecision a, SinglePrecision b) => new(MathF.Max(a.Value, b.Value));

    // A mask is a number of this reading: one for yes, and zero, its default value, for no.
    public static Mask<SinglePrecision> Less(SinglePrecision a, SinglePrecision b) =>
        a.Value < b.Value ? new(Yes) : default;

    public static Mask<SinglePrecision> And(Mask<SinglePrecision> a, Mask<SinglePrecision> b) => new(a.Bits * b.Bits);

    public static Mask<SinglePrecision> Or(Mask<SinglePrecision> a, Mask<SinglePrecision> b) =>
        new(Max(a.Bits, b.Bits));

    public static bool All(Mask<SinglePrecision> mask) => mask.Bits.Value != 0;

    public static SinglePrecision Select(
        Mask<SinglePrecision> where,
        SinglePrecision then,
        SinglePrecision otherwise
    ) => All(where) ? then : otherwise;

    public static SinglePrecision Implicit<TLaw>(SinglePrecision a, SinglePrecision b)
        where TLaw : struct, IImplicitLaw => TLaw.Polish(TLaw.Near(a, b), a, b);

    public static SinglePrecision Step(SinglePrecision value, Symbol symbol, DataSource source) => value;
}
#endregion
