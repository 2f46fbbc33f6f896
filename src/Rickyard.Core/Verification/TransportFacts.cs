using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Verification;

/// <summary>Published ratios of direction, bark, length and size beside the model's.</summary>
internal static class TransportFacts
{
    internal static IEnumerable<BesideFact> All(CancellationToken cancellation) => [.. Directions(), .. Logs(cancellation), .. Sizes(cancellation)];

    private static IEnumerable<BesideFact> Directions()
    {
        WaterMobility beech = Of("European beech"), oak = Of("northern red oak"), aspen = Of("quaking aspen");
        yield return Ratio("beech along over across the grain, 10 % and 40 °C", 13, 13, Along(beech, 0.10, 40), "Skaar 1958: about 13");
        yield return Ratio("along over across the grain, 5 %", 100, 100, Along(oak, 0.05, 25), "Langrish 1993; red oak at 25 °C taken");
        yield return Ratio("along over across the grain, 25 %", 2, 4, Along(oak, 0.25, 25), "Langrish 1993; red oak at 25 °C taken");
        yield return Ratio("end grain over flat-sawn face", 8, 10, Along(oak, 0.15, 25), "Wengert, a practitioner's statement on rates; diffusivity at 15 % taken");
        yield return Ratio(
            "aspen across the grain, 18 % over 2.5 %", 8, 8, aspen.BoundAcross(0.18, 43) / aspen.BoundAcross(0.025, 43), "Simpson 1974, 43 °C");
    }

    private static BesideFact Ratio(string statement, double low, double high, double model, string source) =>
        new("Direction", statement, low, high, model, "ratio", source);

    private static double Along(WaterMobility wood, double moisture, double celsius) => wood.BoundAlong(moisture, celsius) / wood.BoundAcross(moisture, celsius);

    private static WaterMobility Of(string name)
    {
        var species = SpeciesCatalogue.Find(name).Value!;
        return new(species.BasicDensity.Value.KilogramsPerCubicMetre, WaterMobility.FreeWaterOf(species.Anatomy));
    }

    // Eucalyptus is not among the woods here; the stand-in and the air are ours, so only the sign and rough size can be compared.
    private static IEnumerable<BesideFact> Logs(CancellationToken cancellation)
    {
        const string source = "Eucalyptus logs in piles, Chile; unknown dense hardwood of 150 mm, 100 days at 20 °C and 60 % taken";
        double Loss(double metres, bool bark) => Lost(
            "unknown dense hardwood", Split.Round(Length.FromMetres(0.15), Length.FromMetres(metres), bark), 100, cancellation);
        var barked = Loss(2.44, true);
        yield return new("Bark", "logs without over with bark: loss gained", 8, 8, 100 * (Loss(2.44, false) / barked - 1), "%", source);
        yield return new("Length", "barked logs of 2.44 m over 3.5 m: loss gained", 3, 3, 100 * (barked / Loss(3.5, true) - 1), "%", source);
    }

    private static IEnumerable<BesideFact> Sizes(CancellationToken cancellation)
    {
        const string source = "Norway 2023: eighths dried fastest, rounds in bark dry only at the ends; 200 mm log, 300 mm long, 60 days at 20 °C and 60 % taken";
        Split Part(double degrees) => Split.Wedge(Length.FromMetres(0.1), Angle.FromDegrees(degrees), Length.FromMetres(0.3));
        double eighth = Lost("silver birch", Part(45), 60, cancellation), quarter = Lost("silver birch", Part(90), 60, cancellation);
        var round = Lost("silver birch", Split.Round(Length.FromMetres(0.2), Length.FromMetres(0.3)), 60, cancellation);
        yield return new("Size", "birch eighth over quarter: loss (above 1 expected)", null, null, eighth / quarter, "ratio", source);
        yield return new("Size", "birch eighth over round in bark: loss (well above 1 expected)", null, null, eighth / round, "ratio", source);
    }

    private static double Lost(string species, Split split, double days, CancellationToken cancellation) =>
        TypicalRun.Of(SpeciesCase.Of(species, split, new(2024, 4, 1), new SteadyPeriod(null, 20, 0.60, 1), days, days), cancellation).Series.LossFraction[^1];
}
