using NodaTime;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Reads how wet and warm the wood is at the start, and when that is.</summary>
internal static class StartSection
{
    private const string WantedMoisture =
        "Give \"68 % dry basis\", \"40 % wet basis\", \"green\" (the species' usual green moisture), or { \"core\": …, \"shell\": …, \"end\": … }.";

    /// <summary>What to do where weather has no day to start from.</summary>
    public const string WantedDay = "Weather needs the day on which the run starts, such as \"2024-05-14\".";

    private const double UsualCelsius = 15;
    private static readonly string[] Keys = ["moisture", "temperature", "at"];
    private static readonly LocalDate NoDay = new(2001, 1, 1);

    public static CaseStart? Read(CaseObject root, WoodSection wood, bool needsCalendar, CaseFindings findings)
    {
        if (root.NeededGroup("start", Keys) is not { } start) return null;
        var moisture = Moisture(start, wood, findings);
        var celsius = start.QuantityOr("temperature", CaseLimits.WoodTemperature, UsualCelsius, "The wood's temperature at the start was not given: 15 °C.");
        var day = Day(start, needsCalendar);
        return moisture is null ? null : moisture with { Celsius = celsius, At = day ?? NoDay, IsDated = day is not null };
    }

    /// <summary>The day on which it is, or null where none was given.</summary>
    public static LocalDate? DayOf(CaseObject root) => root.Group("start", Keys)?.Day("at");

    private static LocalDate? Day(CaseObject start, bool needed)
    {
        if (needed && !start.Has("at")) start.Missing("at", WantedDay);
        return start.Day("at");
    }

    private static CaseStart? Moisture(CaseObject start, WoodSection wood, CaseFindings findings)
    {
        if (start.IsGroup("moisture")) return Parts(start.Group("moisture", "core", "shell", "end")!, wood, findings);
        if (start.NeededText("moisture", WantedMoisture) is not { } text) return null;
        if (text.Equals("green", StringComparison.OrdinalIgnoreCase)) return Green(wood, findings);
        return One(start, "moisture", wood, findings) is { } whole ? Of(whole, null, null) : null;
    }

    private static CaseStart? Parts(CaseObject parts, WoodSection wood, CaseFindings findings)
    {
        foreach (var key in new[] { "core", "shell" })
            if (!parts.Has(key)) parts.Missing(key, CaseLimits.Moisture.Wanted);
        var (core, shell, end) = (One(parts, "core", wood, findings), One(parts, "shell", wood, findings), One(parts, "end", wood, findings));
        if (core is null || shell is null) return null;
        if (!parts.Has("end")) findings.Assume("The moisture of the end grain at the start was not given: that of the shell.");
        return Of(core.Value, shell, end ?? shell);
    }

    private static double? One(CaseObject from, string key, WoodSection wood, CaseFindings findings)
    {
        if (from.Quantity(key, CaseLimits.Moisture) is not { } moisture) return null;
        if (moisture <= wood.MaximumMoisture) return moisture;
        var given = from.Text(key, WantedMoisture)!;
        findings.Wrong(from.PathOf(key), $"{Echo.Of(given)} is more water than the wood's pores can hold.", Most(wood));
        return null;
    }

    private static string Most(WoodSection wood) => wood.BasicDensity is { } density
        ? Invariant($"At a basic density of {density:0} kg/m³ at most {100 * wood.MaximumMoisture:0} % dry basis fits in; give 0 to that.")
        : Invariant($"Even the lightest wood known here holds at most {100 * wood.MaximumMoisture:0} % dry basis.");

    private static CaseStart? Green(WoodSection wood, CaseFindings findings)
    {
        if (wood.Species is not { } species) return null;
        var green = species.GreenMoisture;
        var mean = Math.Min(green.Mean, wood.MaximumMoisture);
        findings.Assume(Invariant($"Green {species.CommonName} is taken at {100 * mean:0} % dry basis, give or take {100 * green.Spread:0} points ({green.Rule})."));
        return Of(mean, null, null) with { IsGreen = true };
    }

    private static CaseStart Of(double core, double? shell, double? end) => new(core, shell, end, false, UsualCelsius, NoDay);
}
