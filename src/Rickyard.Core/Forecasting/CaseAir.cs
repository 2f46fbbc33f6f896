using NodaTime;
using Rickyard.Core.Air;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Core.Forecasting;

/// <summary>
/// The surroundings of a case's periods, as one series for the typical split or for one group of members; of wood in a hot box those that were recorded when the box was run.
/// </summary>
internal sealed class CaseAir(DryingCase drying, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, RecordedAir? recorded = null)
{
    /// <summary>Air of some periods of the case.</summary>
    /// <param name="periods">Periods in order, none of them a further split; the last is held.</param>
    /// <param name="startDay">Days from the start of the case at which the first begins.</param>
    /// <param name="days">Days to cover.</param>
    /// <param name="split">The piece as it is then.</param>
    /// <param name="conditions">Weather and rack of the group.</param>
    /// <param name="notes">Notes of the weather, added to.</param>
    internal AirSeries Of(IReadOnlyList<Period> periods, double startDay, double days, Split split, GroupConditions conditions, ISet<string> notes)
    {
        if (recorded is not null) return recorded.Air;
        List<(double, Surroundings)> spans = [];
        var day = 0.0;
        for (var i = 0; i < periods.Count && day < days; i++)
        {
            var length = i == periods.Count - 1 ? days - day : Math.Min(periods[i].Days ?? days - day, days - day);
            Append(spans, periods[i], startDay + day, length, split, conditions, notes);
            day += length;
        }

        return new(spans);
    }

    /// <summary>Air pressure of the case: of the weather's elevation, else of sea level. [Pa]</summary>
    internal double Pressure() => recorded?.Pressure ?? drying.Weather.Select(name => weather[name].Usual(Midnight(0), 1).ElevationMetres)
        .Select(metres => StandardPressure.AtElevation(metres).Pascals).FirstOrDefault(Quantities.Pressure.StandardAtmosphere.Pascals);

    private void Append(
        List<(double, Surroundings)> spans, Period period, double startDay, double days, Split split, GroupConditions conditions, ISet<string> notes)
    {
        switch (period)
        {
            case SteadyPeriod steady:
                spans.Add((days * NodaConstants.SecondsPerDay, Steady(steady, split, conditions.Rack)));
                break;
            case RestPeriod rest:
                spans.Add((days * NodaConstants.SecondsPerDay, Rest(rest, split)));
                break;
            case RackPeriod rack:
                foreach (var hour in Rack(rack, startDay, days, split, conditions, notes)) spans.Add((NodaConstants.SecondsPerHour, hour));
                break;
        }
    }

    private static Surroundings Steady(SteadyPeriod steady, Split split, RackFactors factors)
    {
        var speed = (steady.Speed ?? SurfaceTransfer.StillIndoorSpeed) * factors.Wind;
        return IndoorAir.Surroundings(
            Temperature.FromCelsius(steady.Celsius), RelativeHumidity.FromFraction(steady.RelativeHumidity), split.SurfaceDiameter, Speed.FromMetresPerSecond(speed));
    }

    private static Surroundings Rest(RestPeriod rest, Split split)
    {
        var still = IndoorAir.Surroundings(Temperature.FromCelsius(rest.Celsius), RelativeHumidity.FromFraction(0.5), split.SurfaceDiameter);
        return still with { FreshAir = Surroundings.ClosedUp };
    }

    private Surroundings[] Rack(RackPeriod rack, double startDay, double days, Split split, GroupConditions conditions, ISet<string> notes)
    {
        var scenario = weather[rack.Weather];
        var hours = (int)Math.Ceiling(days * 24 - 1e-9);
        var outdoors = conditions.Weather is { } number ? scenario.Member(number, Midnight(startDay), hours) : scenario.Usual(Midnight(startDay), hours);
        if (conditions.Weather is null) notes.UnionWith(outdoors.Notes);
        return RackAir.Surroundings(outdoors, rack.Rack, new(split.SurfaceDiameter, split.Length), conditions.Rack);
    }

    private LocalDateTime Midnight(double day) => drying.StartDate.AtMidnight().PlusHours((int)Math.Floor(day * 24));
}
