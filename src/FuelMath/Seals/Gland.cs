using UnitsNet;

namespace FuelMath.Joints;

/// <summary>A rectangular groove with the wall that closes it: the space of an O-ring.</summary>
/// <remarks>
/// <para>
/// Radial (piston and rod): the gap between the walls is half the difference of two diameters, if the parts are
/// centered, which the check assumes. Face: the gap is the depth of the groove, when the faces touch. An O-ring boss,
/// whose ring sits in a chamfer, is checked as a face gland with the gap and width measured on the actual port and
/// stud.
/// </para>
/// </remarks>
/// <seealso href="../guide/seals.html">Seals</seealso>
public sealed partial class Gland
{
    private Gland(
        GlandKind kind,
        TolerancedLength seat,
        TolerancedLength wall,
        TolerancedLength width,
        string seatName,
        string wallName
    )
    {
        ArgumentNullException.ThrowIfNull(seat, seatName);
        ArgumentNullException.ThrowIfNull(wall, wallName);
        ArgumentNullException.ThrowIfNull(width);
        (Kind, Inner, Outer, Width) = (kind, seat, wall, width);
    }

    /// <summary>How it holds its ring.</summary>
    public GlandKind Kind { get; }

    /// <summary>Radial: the diameter that the ring sits on. Face: the inside diameter that the ring is put around.</summary>
    public TolerancedLength Inner { get; }

    /// <summary>Radial: the diameter that closes the groove. Face: the depth of the groove.</summary>
    public TolerancedLength Outer { get; }

    /// <summary>Width of the groove.</summary>
    public TolerancedLength Width { get; }

    /// <summary>A groove on the inner part, such as that of an injector in its rail cup.</summary>
    /// <param name="grooveDiameter">Diameter at the bottom of the groove.</param>
    /// <param name="bore">Bore that closes it; the greater of the two, tolerances included.</param>
    /// <param name="width">Width of the groove.</param>
    /// <returns>The gland.</returns>
    /// <exception cref="ArgumentNullException">A measure is null.</exception>
    /// <exception cref="ArgumentException">The bore is not greater than the groove.</exception>
    public static Gland Piston(TolerancedLength grooveDiameter, TolerancedLength bore, TolerancedLength width) =>
        Radial(
            GlandKind.Piston,
            grooveDiameter,
            bore,
            width,
            (nameof(grooveDiameter), nameof(bore)),
            "The bore",
            "the groove"
        );

    /// <summary>A groove inside the outer part, around a smooth inner part.</summary>
    /// <param name="rodDiameter">Diameter of the inner part.</param>
    /// <param name="grooveBore">Diameter at the bottom of the groove; the greater of the two, tolerances included.</param>
    /// <param name="width">Width of the groove.</param>
    /// <returns>The gland.</returns>
    /// <exception cref="ArgumentNullException">A measure is null.</exception>
    /// <exception cref="ArgumentException">The groove is not greater than the inner part.</exception>
    public static Gland Rod(TolerancedLength rodDiameter, TolerancedLength grooveBore, TolerancedLength width) =>
        Radial(
            GlandKind.Rod,
            rodDiameter,
            grooveBore,
            width,
            (nameof(rodDiameter), nameof(grooveBore)),
            "The groove",
            "the inner part"
        );

    /// <summary>A groove in a face, under a cover that touches it.</summary>
    /// <param name="insideDiameter">Inside diameter of the groove.</param>
    /// <param name="depth">Depth of the groove.</param>
    /// <param name="width">Width of the groove.</param>
    /// <returns>The gland.</returns>
    /// <exception cref="ArgumentNullException">A measure is null.</exception>
    public static Gland Face(TolerancedLength insideDiameter, TolerancedLength depth, TolerancedLength width) =>
        new(GlandKind.Face, insideDiameter, depth, width, nameof(insideDiameter), nameof(depth));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Kind}: {Inner} to {Outer}, width {Width}");

    /// <summary>The gap between the walls, from the two dimensions, m.</summary>
    internal double Room(double inner, double outer) => Kind == GlandKind.Face ? outer : (outer - inner) / 2;

    private static Gland Radial(
        GlandKind kind,
        TolerancedLength inner,
        TolerancedLength outer,
        TolerancedLength width,
        (string Inner, string Outer) names,
        string what,
        string than
    )
    {
        Gland gland = new(kind, inner, outer, width, names.Inner, names.Outer);
        return inner.Greatest.InSi() < outer.Least.InSi()
            ? gland
            : throw new RefusedArgumentException(
                RefusalCode.OutOfRange,
                $"{what:subject} must be greater than {than:other} at every limit; it is {outer.Least.ToUnit(outer.Nominal.Unit):value} at least, and {than:other} {inner.Greatest.ToUnit(outer.Nominal.Unit):above} at most.",
                names.Outer
            );
    }
}
