using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Verification;

/// <summary>Pin readings outside and inside of part-dry wood beside core and shell of the model: sign and rough size only.</summary>
internal static class GradientFacts
{
    private const string Pins = "pin meter; above about 28 % only nominal";

    internal static IEnumerable<BesideFact> All(ILookup<string, DryingRun> runs, CancellationToken cancellation)
    {
        var german = runs["V10"].Single().Typical;
        yield return Gap("oak split, cut last winter, outside 8, inside 30 to 35", 22, 27, german.Core[^1] - german.Shell[^1], $"{Pins}; V10 in August taken");
        yield return Gap("shingle oak split after 6 months in Pennsylvania, outside 6 to 12, inside 25", 13, 19, Outdoors(new(2024, 3, 1), 180, cancellation), $"{Pins}; red oak in Pittsburgh from March taken");
        yield return Gap("oak split 3 years ago, outside 12, inside 23", 11, 11, Outdoors(new(2024, 9, 1), 3 * 365, cancellation), $"{Pins}; red oak in Pittsburgh taken");
        var hearth = runs["V16"].Single().Typical;
        yield return new("Inside", "oak block by a hearth after 19 days, outside", 28, 28, 100 * hearth.Shell[^1], "% dry basis", $"{Pins}; printed as high 20s; V16");
    }

    private static BesideFact Gap(string statement, double low, double high, double gap, string source) =>
        new("Inside", statement, low, high, 100 * gap, "points, core less shell", source);

    private static double Outdoors(LocalDate start, double days, CancellationToken cancellation)
    {
        var split = Split.Wedge(Length.FromMetres(0.1), Angle.FromDegrees(60), Length.FromInches(16));
        var rack = new RackPeriod(null, new(null, "Pittsburgh, Pennsylvania"), new RackDescription());
        var series = TypicalRun.Of(SpeciesCase.Of("northern red oak", split, start, rack, days, days), cancellation).Series;
        return series.Core[^1] - series.Shell[^1];
    }
}
