namespace FuelMath.Shapes;

internal enum JsonItemKind
{
    Object,
    List,
    Text,
    Number,
    Truth,
    Null,
}
