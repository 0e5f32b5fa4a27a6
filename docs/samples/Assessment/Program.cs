using FuelMath.Samples.Assessment;

return Job.Run(args, Console.Out, Console.Error);
