using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>How far a full Newton step goes, over all links so far, m³/s.</summary>
internal struct StepSizes<T>
    where T : struct, IScalar<T>
{
    /// <summary>The greatest change of a flow.</summary>
    internal T Change;

    /// <summary>The greatest flow.</summary>
    internal T Scale;

    /// <summary>The greatest of the terms of a flow that are of its link alone.</summary>
    internal T OwnTerm;

    /// <summary>The greatest of the terms of a flow that are of a change of pressure.</summary>
    internal T PressureTerm;

    /// <summary>The flow of a link after the step.</summary>
    /// <param name="flow">Its present flow.</param>
    /// <param name="free">See <see cref="LinearLink{T}"/>.</param>
    /// <param name="fromUp">Likewise.</param>
    /// <param name="upRise">The change of pressure upstream.</param>
    /// <param name="toDown">Likewise.</param>
    /// <param name="downRise">The change of pressure downstream.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T Next(T flow, T free, T fromUp, T upRise, T toDown, T downRise)
    {
        OwnTerm = T.MaxSize(OwnTerm, free);
        T rise = fromUp * upRise;
        T next = free + rise - (toDown * downRise);
        PressureTerm = T.MaxSize(PressureTerm, rise);
        Change = T.MaxSize(Change, next - flow);
        Scale = T.MaxSize(Scale, next);
        return next;
    }
}
