using Rickyard.Core.Cases;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring;

/// <summary>The scale or species setting a pin meter was on: a row of the resistance table.</summary>
/// <param name="Name">Name of the row it follows.</param>
public sealed record MeterScale(string Name)
{
    private const double LeastShown = 0.001;

    /// <summary>What most meters of North America are marked in (Wengert, text).</summary>
    public static MeterScale DouglasFir { get; } = new("Douglas-fir");

    /// <summary>Resistance at 80 °F at which it shows a number. [MΩ]</summary>
    /// <param name="shown">[kg kg⁻¹ on this scale]</param>
    public double Megohm(double shown) => Row.Megohm(Math.Max(LeastShown, shown));

    private ResistanceCurve Row => ResistanceTable.Find(Name) ?? throw new InvalidOperationException($"There is no resistance row of the name {Name}.");

    /// <summary>The scale a person named, or what is wrong with the name and which there are.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="field">Option, key or column it came from.</param>
    public static Result<MeterScale> Find(string text, string field)
    {
        var name = text.Trim();
        if (name.Length == 0) return Refused(field, "The meter's scale is empty.");
        if (ResistanceTable.All.FirstOrDefault(row => Plain(row.Name) == Plain(name)) is { } row) return ResultOf.Success(new MeterScale(row.Name));
        if (name.Any(char.IsDigit) || name.Length <= 2)
            return Refused(field, $"{Echo.Of(name)} is a setting by number or letter, and what it stands for differs from maker to maker.");
        if (SpeciesCatalogue.Find(name, field).TryGet(out var species) && SpeciesRows.Of(species) is { Kind: RowKind.Own, Rows: [var own] }) return ResultOf.Success(new MeterScale(own.Name));
        var near = NearName.Find(name, ResistanceTable.All.Select(one => one.Name));
        return Refused(field, $"{Echo.Of(name)} is no scale with a published curve.{(near is null ? "" : $" Did you mean {near}?")}");
    }

    private static Result<MeterScale> Refused(string field, string whatIsWrong) => ResultOf.Failure<MeterScale>(
        field, whatIsWrong, $"Give the wood its scale is for, as its booklet says; left out, Douglas-fir is taken. There are: {string.Join(", ", ResistanceTable.All.Select(row => row.Name))}.");

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetter)).ToLowerInvariant();
}
