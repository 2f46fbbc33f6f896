using System.Globalization;
using BenchmarkDotNet.Running;
using Rickyard.Benchmarks;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["wedge", "A" or "B"]:
        WedgeRace.Run(args[1], tolerance: 3e-3, repeats: 9);
        return 0;
    case ["wedge", "A" or "B", var tolerance]:
        WedgeRace.Run(args[1], double.Parse(tolerance, CultureInfo.InvariantCulture), repeats: 9);
        return 0;
    case ["ensemble", ..]:
        EnsembleYear.Run(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 256, Environment.ProcessorCount, 365, args.Length > 2 ? args[2] : null);
        return 0;
    case ["charge"]:
        ChargeRace.Run(repeats: 9);
        return 0;
    case ["honesty", ..]:
        HonestyTable.Run(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 320, args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 128);
        return 0;
    case ["learning"]:
        LearningTime.Run();
        return 0;
    case ["scaling"]:
        Scaling.Run();
        return 0;
    case ["steps", ..]:
        BenchmarkRunner.Run<StepBenchmarks>(args: args[1..]);
        return 0;
    default:
        Console.Error.WriteLine("""
            usage:
              wedge A|B [tolerance]           the comparison problems, one JSON line
              ensemble [members] [weather]    members through a year of hourly weather, one JSON line
              charge                          two weeks of six classes in a box against problem A, one JSON line
              honesty [lots] [members]        what is learnt from made-up lots against what is true of them: the tables of honesty.md
              learning                        learning from ten and from fifty readings, by members
              scaling                         time against cells, members and hours
              steps                           BenchmarkDotNet on single days
            """);
        return 2;
}
