namespace FuelMath.ShopTests;

/// <summary>What the readings of a shop test say together.</summary>
public enum ShopVerdict
{
    /// <summary>Every reading is as predicted, within its tolerance.</summary>
    Agrees,

    /// <summary>One reading differs, several things would explain it, and no other reading was given to tell them apart.</summary>
    CannotTell,

    /// <summary>Of all causes one alone explains every reading.</summary>
    OneCause,

    /// <summary>Several causes explain every reading; these readings do not tell them apart.</summary>
    SeveralCauses,

    /// <summary>No single cause explains every reading: two at once, a wrong reading, or something that the model does not hold.</summary>
    NoSingleCause,
}
