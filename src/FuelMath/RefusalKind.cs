namespace FuelMath;

/// <summary>What kind of refusal an exception is.</summary>
public enum RefusalKind
{
    /// <summary>An argument is not what is allowed: a <see cref="RefusedValueException"/>.</summary>
    Value,

    /// <summary>Data do not reach there: an <see cref="OutsideTableException"/>.</summary>
    Table,

    /// <summary>A property is not known: an <see cref="UnknownPropertyException"/>.</summary>
    Property,

    /// <summary>No state satisfies the equations: a <see cref="NoSolutionException"/>.</summary>
    Solution,

    /// <summary>A document is not what is allowed: a <see cref="DocumentException"/>.</summary>
    Document,

    /// <summary>A listed formula refuses a call: a <c>FormulaRefusedException</c>.</summary>
    Formula,

    /// <summary>A text is no quantity: a <c>QuantityTextException</c>.</summary>
    Text,
}
