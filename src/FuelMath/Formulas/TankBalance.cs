using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Volumes that bring a tank from what it holds to a target content. Volumes at one temperature, ideal mixing. SI units.</summary>
/// <seealso href="../guide/tanks.html">Tanks</seealso>
public static class TankBalance
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource ContentAfterSource = new(
        "Definition",
        "conservation of the volume of each part, ideal mixing"
    );

    internal static readonly DataSource AddedVolumeSource = new(
        "Definition",
        "conservation of the volume of each part, ideal mixing"
    );

    internal static readonly DataSource FirstVolumeSource = new(
        "Definition",
        "conservation of the volume of each part, ideal mixing"
    );

    internal static readonly DataSource ContentFromSignalSource = new(
        "Definition",
        "straight line between the two ends"
    );

    internal static readonly DataSource ApparentContentSource = new(
        "Definition",
        "growth of the layer over the fuel sampled"
    );

    internal static readonly Symbol Added = new("Va", "m3", "volume to add");

    internal static readonly Symbol First = new("V1", "m3", "volume of the first to add");

    internal static readonly Symbol Content = new("x", "", "content after mixing");

    internal static readonly Symbol SensorContent = new("xs", "", "content from the reading of a sensor");

    internal static readonly Symbol Apparent = new("xw", "", "content from the growth of the water layer");

    /// <summary>The content of a mixture of two volumes.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="heldContent">Content of what the tank holds, a volume fraction.</param>
    /// <param name="heldVolume">Volume held, m³.</param>
    /// <param name="addedContent">Content of what is added, a volume fraction.</param>
    /// <param name="addedVolume">Volume added, m³; one of the two greater than zero.</param>
    /// <returns>Content of the whole, a volume fraction.</returns>
    /// <remarks>Source: [Definition] conservation of the volume of each part, ideal mixing.</remarks>
    [MethodImpl(Inline)]
    public static T ContentAfter<T>(T heldContent, T heldVolume, T addedContent, T addedVolume)
        where T : struct, IScalar<T> =>
        T.Step(
            ((heldContent * heldVolume) + (addedContent * addedVolume)) / (heldVolume + addedVolume),
            Content,
            ContentAfterSource
        );

    /// <summary>The volume of one liquid that brings a tank to a target content: V (y - x)/(xa - y).</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="heldContent">Content of what the tank holds, a volume fraction.</param>
    /// <param name="heldVolume">Volume held, m³.</param>
    /// <param name="addedContent">Content of what is added, a volume fraction; not the target.</param>
    /// <param name="targetContent">Content wanted, a volume fraction between the other two.</param>
    /// <returns>Volume to add, m³.</returns>
    /// <remarks>Source: [Definition] conservation of the volume of each part, ideal mixing.</remarks>
    [MethodImpl(Inline)]
    public static T AddedVolume<T>(T heldContent, T heldVolume, T addedContent, T targetContent)
        where T : struct, IScalar<T> =>
        T.Step(heldVolume * (targetContent - heldContent) / (addedContent - targetContent), Added, AddedVolumeSource);

    /// <summary>The volume of the first of two liquids that fill a tank to a volume and a content.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="heldContent">Content of what the tank holds, a volume fraction.</param>
    /// <param name="heldVolume">Volume held, m³, at the temperature of the contents' definition.</param>
    /// <param name="firstContent">Content of the first liquid, a volume fraction.</param>
    /// <param name="secondContent">Content of the second liquid, a volume fraction; not that of the first.</param>
    /// <param name="targetContent">Content wanted, a volume fraction.</param>
    /// <param name="room">Volume to be filled, m³, at the temperature of the tank.</param>
    /// <param name="firstExpansion">Volume of the first at the temperature of the tank over that at the definition's.</param>
    /// <param name="secondExpansion">The same of the second.</param>
    /// <returns>Volume of the first, m³, at the temperature of the definition; the second fills the rest.</returns>
    /// <remarks>Source: [Definition] conservation of the volume of each part, ideal mixing.</remarks>
    [MethodImpl(Inline)]
    public static T FirstVolume<T>(
        T heldContent,
        T heldVolume,
        T firstContent,
        T secondContent,
        T targetContent,
        T room,
        T firstExpansion,
        T secondExpansion
    )
        where T : struct, IScalar<T>
    {
        T missing = (targetContent - heldContent) * heldVolume;
        T first = firstContent - targetContent;
        T second = secondContent - targetContent;
        return T.Step(
            ((missing * secondExpansion) - (second * room)) / ((first * secondExpansion) - (second * firstExpansion)),
            First,
            FirstVolumeSource
        );
    }

    /// <summary>The content that a sensor with a linear signal reports.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="signal">Its signal, in any unit.</param>
    /// <param name="atNone">Its signal for a content of 0.</param>
    /// <param name="atAll">Its signal for a content of 1; not that of 0.</param>
    /// <returns>Content, a fraction.</returns>
    /// <remarks>Source: [Definition] straight line between the two ends.</remarks>
    [MethodImpl(Inline)]
    public static T ContentFromSignal<T>(T signal, T atNone, T atAll)
        where T : struct, IScalar<T> =>
        T.Step((signal - atNone) / (atAll - atNone), SensorContent, ContentFromSignalSource);

    /// <summary>
    /// The ethanol content from a shake-out with water, assuming additive volumes: growth of the water layer over the
    /// fuel.
    /// </summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="fuelVolume">Volume of fuel sampled, m³; greater than zero.</param>
    /// <param name="waterVolume">Volume of water added, m³.</param>
    /// <param name="layerVolume">Volume of the lower layer afterwards, m³.</param>
    /// <returns>
    /// Apparent content, a volume fraction; below the true one, because ethanol and water contract when mixed.
    /// </returns>
    /// <remarks>Source: [Definition] growth of the layer over the fuel sampled.</remarks>
    [MethodImpl(Inline)]
    public static T ApparentContent<T>(T fuelVolume, T waterVolume, T layerVolume)
        where T : struct, IScalar<T> =>
        T.Step((layerVolume - waterVolume) / fuelVolume, Apparent, ApparentContentSource);
}
