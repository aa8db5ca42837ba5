System.Console.WriteLine(Lanewright.Tmp.X);
