using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Tables;

namespace Rickyard.Core.Measuring.Ovens;

/// <summary>The methods known here, from Data/oven_methods.csv.</summary>
public static class OvenMethods
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<OvenMethod> All { get; } = [.. DataRow.Read("Measuring/oven_methods").Select(Row)];

    /// <summary>Those of an appliance; the first is the one meant where none is named.</summary>
    public static IReadOnlyList<OvenMethod> For(Appliance appliance) => [.. All.Where(method => method.Appliance == appliance)];

    /// <summary>What is meant where no method is named: ASTM D4442 B, or the microwave at medium-low power.</summary>
    public static OvenMethod Usual(Appliance appliance) => appliance == Appliance.Oven ? All.First(method => method.Key == "ASTM D4442 B") : For(appliance)[0];

    /// <summary>The method of a name; case, hyphens and spaces do not matter.</summary>
    /// <param name="name">What a person typed.</param>
    /// <param name="appliance">What it is dried in.</param>
    /// <param name="field">Where the name came from.</param>
    public static Result<OvenMethod> Find(string name, Appliance appliance, string field)
    {
        var plain = Plain(name);
        if (All.FirstOrDefault(method => Plain(method.Key) == plain || Plain(method.Name) == plain) is not { } found) return Unknown(name, appliance, field);
        if (found.Appliance == appliance) return ResultOf.Success(found);
        return ResultOf.Failure<OvenMethod>(field, $"{Echo.Of(name)} is a method for {(found.Appliance == Appliance.Oven ? "an oven" : "a microwave")}.", Allowed(appliance));
    }

    private static Result<OvenMethod> Unknown(string name, Appliance appliance, string field)
    {
        var near = NearName.Find(name, For(appliance).Select(method => method.Key));
        return ResultOf.Failure<OvenMethod>(field, $"{Echo.Of(name)} is not a method known here.", near is null ? Allowed(appliance) : $"Did you mean \"{near}\"? {Allowed(appliance)}");
    }

    private static string Allowed(Appliance appliance) => $"Give one of {string.Join(", ", For(appliance).Select(method => $"\"{method.Key}\""))}.";

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static OvenMethod Row(DataRow row) => new(row.Text("key"), row.Text("name"), Enum.Parse<Appliance>(row.Text("appliance"), ignoreCase: true))
    {
        Celsius = row.NumberOrNull("low_c") is { } low ? (low, row.Number("high_c")) : null,
        Watts = row.NumberOrNull("watts"),
        FirstHours = row.Number("first_hours"),
        IntervalHours = row.Number("interval_hours"),
        Limit = row.Number("limit"),
        LimitOf = Enum.Parse<LossLimit>(row.Text("limit_of"), ignoreCase: true),
        NumbersMark = row.Text("numbers_mark"),
        Words = row.Text("words"),
        Specimen = row.Text("specimen"),
        IsWetBasis = row.Text("basis") == "wet",
        Overshoot = row.Number("overshoot"),
        Mark = row.Text("mark"),
        Source = row.Text("source"),
    };
}
