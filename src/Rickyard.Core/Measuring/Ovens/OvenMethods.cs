using System.Globalization;
using CsvHelper;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Ovens;

/// <summary>The methods known here, from Data/oven_methods.csv.</summary>
public static class OvenMethods
{
    private const string Resource = "Rickyard.Core.Measuring.Data.oven_methods.csv";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<OvenMethod> All { get; } = Load();

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

    private static List<OvenMethod> Load()
    {
        using var stream = typeof(OvenMethods).Assembly.GetManifestResourceStream(Resource)!;
        using var csv = CsvReader.Create(stream, new CsvReaderOptions { Separator = ',', CommentPrefix = '#' });
        List<OvenMethod> methods = [];
        while (csv.Read()) methods.Add(Row(csv));
        return methods;
    }

    private static OvenMethod Row(CsvReader csv)
    {
        double? Number(string column) => csv.GetString(column) is { Length: > 0 } text ? double.Parse(text, CultureInfo.InvariantCulture) : null;

        return new(csv.GetString("key"), csv.GetString("name"), Enum.Parse<Appliance>(csv.GetString("appliance"), ignoreCase: true))
        {
            Celsius = Number("low_c") is { } low ? (low, Number("high_c")!.Value) : null,
            Watts = Number("watts"),
            FirstHours = Number("first_hours")!.Value,
            IntervalHours = Number("interval_hours")!.Value,
            Limit = Number("limit")!.Value,
            LimitOf = Enum.Parse<LossLimit>(csv.GetString("limit_of"), ignoreCase: true),
            NumbersMark = csv.GetString("numbers_mark"),
            Words = csv.GetString("words"),
            Specimen = csv.GetString("specimen"),
            IsWetBasis = csv.GetString("basis") == "wet",
            Overshoot = Number("overshoot")!.Value,
            Mark = csv.GetString("mark"),
            Source = csv.GetString("source"),
        };
    }
}
