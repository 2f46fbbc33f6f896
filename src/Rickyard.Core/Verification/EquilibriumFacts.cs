using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Verification;

/// <summary>What boards come to outdoors beside the equilibrium that the shipped normals give.</summary>
internal static class EquilibriumFacts
{
    private const int FirstMonth = 5;
    private const int LastMonth = 10;
    private const string Taken = "extension bulletin; equilibrium of the months May to October";

    internal static IEnumerable<BesideFact> All()
    {
        yield return Of("boards under cover in western Oregon, at last", "Portland, Oregon", 12, 14, $"{Taken} in Portland taken");
        yield return Of("boards under cover in eastern Oregon, at last", "Boise, Idaho", 8, 10, $"{Taken} in Boise taken");
    }

    private static BesideFact Of(string statement, string place, double low, double high, string source)
    {
        var months = NormalsCatalogue.Find(place).Value!.Months.Skip(FirstMonth - 1).Take(LastMonth - FirstMonth + 1);
        return new("Equilibrium", statement, low, high, months.Average(Equilibrium), "% dry basis", source);
    }

    private static double Equilibrium(NormalMonth month) => EquilibriumMoisture.From(
        Temperature.FromCelsius((month.HighCelsius + month.LowCelsius) / 2), RelativeHumidity.FromFraction(month.RelativeHumidity)).PercentDry;
}
