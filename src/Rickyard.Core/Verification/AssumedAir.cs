using NodaTime;
using Rickyard.Core.Air;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Tables;
using Rickyard.Core.Weather;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Core.Verification;

/// <summary>The air taken for a measured case: a room, an unheated garage, or a rack in the usual weather of a place.</summary>
/// <param name="row">A row of Data/assumed_air.csv.</param>
internal sealed class AssumedAir(DataRow row)
{
    /// <summary>Vapour given off in a lived-in house; common practice, no source. [Pa]</summary>
    private const double HouseVapor = 300;

    private static readonly Dictionary<string, AssumedAir> ByName = DataRow.Read("Verification/assumed_air").ToDictionary(found => found.Text("name"), found => new AssumedAir(found));

    /// <summary>Place whose normals are taken.</summary>
    internal string Place => row.Text("place");

    internal static AssumedAir Named(string name) => ByName[name];

    /// <summary>The periods of a case that begins on a date and lasts so many days.</summary>
    internal IReadOnlyList<Period> Periods(LocalDate start, double days) => row.Text("kind") switch
    {
        "room" => [new SteadyPeriod(null, row.Number("celsius"), RoomHumidity, row.Number("speed"))],
        "garage" => [.. Months(start, days)],
        _ => [new RackPeriod(null, new(null, Place), Rack())],
    };

    /// <summary>In words, with the reason.</summary>
    internal string Describe() => $"{row.Text("name")}: {State()}; {row.Text("why")}";

    // Vapour outdoors in the month and what a house adds, at the temperature of the room; see Data/assumed_air.csv.
    private double RoomHumidity =>
        (Vapor(Normals.Months[(int)row.Number("month") - 1]) + HouseVapor) / SaturationPressure.OverWater(Kelvins(row.Number("celsius")));

    private MonthlyNormals Normals => NormalsCatalogue.Find(Place).Value!;

    private RackDescription Rack() => new(row.Choice<RackCover>("cover"), row.Choice<RackSun>("sun"), row.Choice<RackWind>("wind"), (int)row.Number("rows"));

    private string State() => row.Text("kind") switch
    {
        "room" => FormattableString.Invariant($"{row.Text("celsius")} °C, {100 * RoomHumidity:0} % relative humidity, {row.Text("speed")} m/s"),
        "garage" => $"month by month {row.Text("warmer_kelvins")} K above outdoors in {Normals.Name}, vapour as outdoors, {row.Text("speed")} m/s",
        _ => $"weather of {Normals.Name}; cover {Word("cover")}, sun {Word("sun")}, wind {Word("wind")}, rows {row.Text("rows")}",
    };

    private string Word(string column) => row.Text(column).ToLowerInvariant();

    private IEnumerable<SteadyPeriod> Months(LocalDate start, double days)
    {
        var end = start.PlusDays((int)days);
        for (var from = start; from < end;)
        {
            var next = LocalDate.Min(end, DateAdjusters.StartOfMonth(from.PlusMonths(1)));
            yield return Month(Normals.Months[from.Month - 1], NodaTime.Period.DaysBetween(from, next));
            from = next;
        }
    }

    private SteadyPeriod Month(NormalMonth month, int days)
    {
        var celsius = Mean(month) + row.Number("warmer_kelvins");
        return new(days, celsius, Vapor(month) / SaturationPressure.OverWater(Kelvins(celsius)), row.Number("speed"));
    }

    private static double Mean(NormalMonth month) => (month.HighCelsius + month.LowCelsius) / 2;

    private static double Vapor(NormalMonth month) => month.RelativeHumidity * SaturationPressure.OverWater(Kelvins(Mean(month)));

    private static double Kelvins(double celsius) => celsius + Temperature.IcePointKelvins;
}
