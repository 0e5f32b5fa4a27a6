using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Density of ethanol with water by the alcohol tables.</summary>
internal sealed class AlcoholTableLaw(double ethanolMassFraction) : PropertyLaw
{
    internal override T At<T>(T kelvins) =>
        AlcoholTable.Density(T.Of(ethanolMassFraction), kelvins - SiUnits.KelvinsFromCelsius(0));
}
