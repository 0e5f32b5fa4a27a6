Console.WriteLine("The assessment is not written yet.");
