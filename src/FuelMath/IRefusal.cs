namespace FuelMath;

/// <summary>
/// Marks an exception for a valid call that has no result: the data do not cover it, a property is not known, or no
/// state satisfies the equations.
/// </summary>
/// <remarks>
/// <para>
/// Three exceptions are refusals: <see cref="NoSolutionException"/>, <see cref="OutsideTableException"/> and
/// <see cref="UnknownPropertyException"/>. A sweep, a batch and a Monte Carlo run keep the refusal of a point and
/// continue. Any other exception means that an argument or the code is wrong; it ends them and is thrown unchanged.
/// <c>catch (Exception e) when (e is IRefusal)</c> catches refusals and nothing else.
/// </para>
/// </remarks>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public interface IRefusal
{
    /// <summary>What is missing or not possible, with its numbers.</summary>
    string Message { get; }
}
