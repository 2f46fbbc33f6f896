using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Verification;

/// <summary>Red oak boards in a kiln, set beside <see cref="RedOakDryingLaw"/>: 6 in wide and 8 ft long, air of 50 % relative humidity at 2 m/s.</summary>
internal static class KilnBoard
{
    private const double From = 0.60;
    private const double To = 0.20;
    private const double Humidity = 0.50;
    private const double Speed = 2;
    private const int Reports = 120;

    /// <summary>Temperature of the time constant that the source is quoted for, 150 °F. [°C]</summary>
    private const double QuotedCelsius = 65.6;

    private static readonly double[] Thicknesses = [1, 2, 3];
    private static readonly double[] Temperatures = [40, 50, 60, 70, 80];

    /// <summary>Points over temperature and thickness.</summary>
    internal static IReadOnlyList<DryingLawPoint> Points(CancellationToken cancellation) =>
        [.. Thicknesses.SelectMany(_ => Temperatures, (inches, celsius) => Point(inches, celsius, cancellation))];

    /// <summary>Time constant of the engine at the quoted point. [d]</summary>
    internal static Prediction TimeConstant(DryingRequest request, CancellationToken cancellation)
    {
        var run = DryingForecast.Run(Case(1, QuotedCelsius), request, new Dictionary<WeatherName, WeatherScenario>(), null, cancellation);
        var equilibrium = Equilibrium(QuotedCelsius);
        return RunReading.Of(run, series => RunReading.DaysTo(run.Days, series.Mean, To) / Math.Log((From - equilibrium) / (To - equilibrium)));
    }

    /// <summary>Time from 60 to 20 % of a board by the engine. [d]</summary>
    internal static double Days(double inches, double celsius, CancellationToken cancellation) => TypicalRun.Of(Case(inches, celsius), cancellation).DaysTo(To);

    private static DryingLawPoint Point(double inches, double celsius, CancellationToken cancellation) =>
        new(inches, celsius, LawDays(inches, celsius), Days(inches, celsius, cancellation));

    private static double LawDays(double inches, double celsius) => RedOakDryingLaw.Days(inches, celsius, From, To, Equilibrium(celsius));

    private static double Equilibrium(double celsius) => SorptionIsotherm.At(celsius).Moisture(Humidity);

    private static DryingCase Case(double inches, double celsius)
    {
        var days = 5 * LawDays(inches, celsius);
        var species = SpeciesCatalogue.Find("northern red oak").Value!;
        return new()
        {
            Name = FormattableString.Invariant($"red oak board {inches} in, {celsius} °C"),
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Block(Length.FromInches(inches), Length.FromInches(6), Length.FromInches(96)),
            Start = new(From, null, null, false, celsius, new(2025, 1, 1)),
            Periods = [new SteadyPeriod(null, celsius, Humidity, Speed)],
            Days = days,
            ReportEvery = days / Reports,
        };
    }
}
