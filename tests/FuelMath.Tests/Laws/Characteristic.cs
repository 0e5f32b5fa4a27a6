using FuelMath.Formulas;

namespace FuelMath.Tests.Laws;

/// <summary>
/// A part seen as one line: what comes out over what goes in, in SI. A hose answers a flow with a loss, an injector
/// answers a differential pressure with a flow; the laws are the same either way.
/// </summary>
/// <param name="Name">Its name in the matrix.</param>
/// <param name="Greatest">The greatest input that it is asked with.</param>
/// <param name="Answer">Through the public member, asked in SI units.</param>
/// <param name="AnswerInOtherUnits">Through the public member, asked in the units of another country.</param>
/// <param name="Formula">The formula below it, read with its slope.</param>
/// <param name="PowerLost">The power that it turns into heat at an input, W.</param>
public sealed record Characteristic(
    string Name,
    double Greatest,
    Func<double, double> Answer,
    Func<double, double> AnswerInOtherUnits,
    Func<Dual<Real>, Dual<Real>> Formula,
    Func<double, double> PowerLost
);
