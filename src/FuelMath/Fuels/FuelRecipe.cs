namespace FuelMath;

/// <summary>How a fuel was composed: what a document must hold to compose it again.</summary>
internal abstract class FuelRecipe;
