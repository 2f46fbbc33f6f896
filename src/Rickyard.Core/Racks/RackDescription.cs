using Rickyard.Core.Quantities;

namespace Rickyard.Core.Racks;

/// <summary>A stack as a person describes it.</summary>
/// <param name="Cover">What keeps rain off it.</param>
/// <param name="Sun">How much sun reaches it.</param>
/// <param name="Wind">How the wind reaches it.</param>
/// <param name="Rows">Rows one behind the other, 1 to 12.</param>
public sealed record RackDescription(
    RackCover Cover = RackCover.Top, RackSun Sun = RackSun.Part, RackWind Wind = RackWind.Open, int Rows = 1)
{
    /// <summary>Deepest stack described. [rows]</summary>
    public const int MostRows = 12;

    /// <summary>Every problem with the description; none when it can be used.</summary>
    public IEnumerable<Problem> Problems()
    {
        if (Rows is < 1 or > MostRows) yield return new(
            "rack.rows",
            $"A rack of {Rows} rows cannot be described.",
            $"Give 1 to {MostRows} rows, one behind the other.");
    }
}
