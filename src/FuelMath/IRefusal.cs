namespace FuelMath;

/// <summary>
/// What an exception is when a question was asked rightly and has no answer: the data do not reach, a property is not
/// known, or no state satisfies the equations.
/// </summary>
/// <remarks>
/// <para>
/// Three exceptions are refusals: <see cref="NoSolutionException"/>, <see cref="OutsideTableException"/> and
/// <see cref="UnknownPropertyException"/>. A sweep, a batch and a Monte Carlo run keep the refusal of a point and go on. Any
/// other exception says that an argument or the code is wrong, and ends them as itself. Where a caller goes on after a
/// refusal, <c>catch (Exception e) when (e is IRefusal)</c> takes these and nothing else.
/// </para>
/// </remarks>
public interface IRefusal
{
    /// <summary>What is missing or not possible, with its numbers.</summary>
    string Message { get; }
}
