namespace FuelMath;

internal enum JsonItemKind
{
    Object,
    List,
    Text,
    Number,
    Truth,
    Null,
}
