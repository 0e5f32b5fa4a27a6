// The examples of the three readmes run here as they stand; check.sh puts each into a method of its own.
if (args is ["compare", string first, string second])
{
    return Contents.Compare(first, second);
}

Console.WriteLine("FuelMath");
Readme.Network();
Readme.System();
Console.WriteLine("FuelMath.Exercises");
Readme.Exercises();
Console.WriteLine("FuelMath.Workbooks");
Readme.Workbooks();
return 0;
