using System.Globalization;
using System.Text.RegularExpressions;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Weigh;

/// <summary>The unit a person typed masses in, to answer in it with as many digits.</summary>
internal sealed partial class MassUnit
{
    private const double Pound = 0.45359237, Ounce = Pound / 16, OuncesInPound = 16;

    private readonly string _unit;
    private readonly double _size;
    private readonly int _decimals;

    private MassUnit(string unit, double size, int decimals) => (_unit, _size, _decimals) = (unit, size, decimals);

    /// <summary>The finest step that any of the masses was typed to. [kg]</summary>
    public double Step { get; private init; }

    /// <summary>The coarsest. [kg]</summary>
    public double CoarsestStep { get; private init; }

    /// <summary>The unit of the first of some masses that were read without a problem, with the digits of the finest.</summary>
    public static MassUnit Of(IEnumerable<string> texts)
    {
        var each = texts.Select(One).ToList();
        return each.Count == 0 ? One("0.01 kg") : new(each[0]._unit, each[0]._size, each.Where(unit => unit._unit == each[0]._unit).Max(unit => unit._decimals)) { Step = each.Min(unit => unit.Step), CoarsestStep = each.Max(unit => unit.Step) };
    }

    /// <summary>"2.31 kg", or "5 lb 3.0 oz" where it was typed so.</summary>
    public string Say(double kilograms)
    {
        if (_unit != "lb oz") return $"{(kilograms / _size).ToString($"F{_decimals}", CultureInfo.InvariantCulture)} {_unit}";
        var ounces = Math.Round(kilograms / Ounce, _decimals, MidpointRounding.AwayFromZero);
        if (ounces < OuncesInPound) return $"{ounces.ToString($"F{_decimals}", CultureInfo.InvariantCulture)} oz";
        return Invariant($"{Math.Floor(ounces / OuncesInPound):0} lb {(ounces % OuncesInPound).ToString($"F{_decimals}", CultureInfo.InvariantCulture)} oz");
    }

    /// <summary>The same.</summary>
    public string Say(Mass mass) => Say(mass.Kilograms);

    /// <summary>A small mass with two digits that count, such as what may be lost between two weighings.</summary>
    public string SaySmall(double kilograms)
    {
        var (unit, size) = _unit switch { "lb oz" => ("oz", Ounce), _ => (_unit, _size) };
        var value = kilograms / size;
        var decimals = value > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(value)), 0, 6) : 0;
        return $"{Math.Round(value, decimals).ToString("0.######", CultureInfo.InvariantCulture)} {unit}";
    }

    private static MassUnit One(string text)
    {
        var parts = Part().Matches(text).Select(match => (Unit: Size(match.Groups["unit"].Value), Match: match)).ToList();
        if (parts.Count == 0) return new("kg", 1, 2) { Step = 0.01 };
        var (unit, last) = parts[^1];
        var typed = last.Groups["decimals"].Length;
        var step = last.Groups["bottom"].Success ? 1 / double.Parse(last.Groups["bottom"].Value, CultureInfo.InvariantCulture) : Math.Pow(10, -typed);
        var decimals = Math.Clamp(Math.Max(typed, unit.Least), 0, 5);
        return parts.Count > 1 ? new("lb oz", Ounce, decimals) { Step = step * unit.Size } : new(unit.Name, unit.Size, decimals) { Step = step * unit.Size };
    }

    private static (string Name, double Size, int Least) Size(string unit) => unit.ToLowerInvariant() switch
    {
        "g" or "gram" or "grams" => ("g", 0.001, 1),
        "lb" or "lbs" or "pound" or "pounds" => ("lb", Pound, 2),
        "oz" or "ounce" or "ounces" => ("oz", Ounce, 1),
        _ => ("kg", 1, 2),
    };

    [GeneratedRegex(@"\d*(?:\s*/\s*(?<bottom>\d+)|\.(?<decimals>\d+))?\s*(?<unit>[a-zA-Z]+)")]
    private static partial Regex Part();
}
