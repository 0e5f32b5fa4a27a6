namespace FuelMath;

/// <summary>How a fuel was made: what a document has to say so that the same one can be made again.</summary>
internal abstract class FuelRecipe;
