using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A link linearized at its present flow: after a step its flow is <see cref="Free"/> + <see cref="FromUp"/> x the change
/// of upstream pressure - <see cref="ToDown"/> x that of downstream pressure.
/// </summary>
internal readonly struct LinearLink<T>
    where T : struct, IScalar<T>
{
    internal readonly T Free;
    internal readonly T FromUp;
    internal readonly T ToDown;

    /// <summary>The pressure residual as it counts, Pa: see <see cref="Stiff.JudgedByFlow"/>.</summary>
    internal readonly T Error;

    /// <summary>Linearizes a link.</summary>
    /// <param name="balance">Its equation.</param>
    /// <param name="flow">Its present flow, m³/s.</param>
    /// <param name="up">The pressure upstream.</param>
    /// <param name="down">The pressure downstream.</param>
    /// <param name="leastSlope">The least slope of its loss, Pa s/m³.</param>
    /// <param name="drag">The addition to its slope.</param>
    /// <param name="worst">The largest error so far.</param>
    /// <param name="plain">The largest residual so far, closed parts included, less what the last digit of the flow makes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal LinearLink(in Balance<T> balance, T flow, T up, T down, T leastSlope, T drag, ref T worst, ref T plain)
    {
        T slope = T.Max(balance.Loss.Rate, leastSlope) + drag;
        T give = 1 / slope;
        T residual = (balance.Up * up) - (balance.Down * down) - balance.Loss.Number;
        T size = T.Abs(residual);
        Error = size * T.Min(T.Of(1), Stiff.JudgedByFlow * give);
        worst = T.MaxSize(worst, Error);
        plain = T.Max(plain, size - (Stiff.LastDigit * slope * T.Abs(flow)));
        Free = flow + (give * residual);
        FromUp = give * balance.Up;
        ToDown = give * balance.Down;
    }
}
