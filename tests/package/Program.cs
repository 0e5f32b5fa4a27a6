// The examples of the three readmes run here as they stand; check.sh puts each into a method of its own.
if (args is ["compare", string first, string second])
{
    return Contents.Compare(first, second);
}

Console.WriteLine("FuelMath");
Readme.RunNetwork();
Readme.RunSystem();
Console.WriteLine("FuelMath.Exercises");
Readme.RunExercises();
Console.WriteLine("FuelMath.Workbooks");
Readme.RunWorkbooks();
return 0;
