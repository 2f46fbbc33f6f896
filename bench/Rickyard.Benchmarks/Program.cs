using System.Globalization;
using Rickyard.Benchmarks;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args is ["wedge", "A" or "B", ..])
{
    WedgeRace.Run(args[1], args.Length > 2 ? double.Parse(args[2], CultureInfo.InvariantCulture) : 1e-2, 9);
    return 0;
}

if (args is ["try", ..]) { Try.Run(args); return 0; }

Console.Error.WriteLine("usage: wedge A|B [tolerance]");
return 2;
