Console.WriteLine("rickyard");
