namespace Rickyard.Core.Measuring.Meters;

/// <summary>
/// Electrical resistance between a meter's pins by moisture, at 80 °F, for one row of the published table (or one published equation); straight in the logarithm of the resistance
/// between cells (physics.md, P1).
/// </summary>
public sealed class ResistanceCurve
{
    private readonly double[] _moistures, _conductances;

    /// <summary>From points.</summary>
    /// <param name="name">What people call the row.</param>
    /// <param name="group">Hardwood, softwood or tropical.</param>
    /// <param name="moistures">Rising. [kg kg⁻¹]</param>
    /// <param name="megohms">Falling, or level at the end. [MΩ]</param>
    /// <param name="mark">How well it is known: table, or text (second-hand).</param>
    /// <param name="note">Doubts about the row; may be empty.</param>
    public ResistanceCurve(string name, string group, double[] moistures, double[] megohms, string mark, string note)
    {
        (Name, Group, Mark, Note) = (name, group, mark, note);
        var falling = Enumerable.Range(0, megohms.Length).TakeWhile(i => i == 0 || megohms[i] < megohms[i - 1]).Count();
        IsLevelAbove = falling < megohms.Length;
        _moistures = moistures[..falling];
        _conductances = [.. megohms.Take(falling).Select(megohm => -Math.Log10(megohm))];
    }

    /// <summary>What people call the row.</summary>
    public string Name { get; }

    /// <summary>Hardwood, softwood or tropical.</summary>
    public string Group { get; }

    /// <summary>How well it is known.</summary>
    public string Mark { get; }

    /// <summary>Doubts about the row; may be empty.</summary>
    public string Note { get; }

    /// <summary>Highest moisture at which the row still tells one from the next. [kg kg⁻¹]</summary>
    public double Highest => _moistures[^1];

    /// <summary>Lowest moisture of the row. [kg kg⁻¹]</summary>
    public double Lowest => _moistures[0];

    /// <summary>Whether the printed row stays level above <see cref="Highest"/>: wetter wood cannot be told apart there.</summary>
    public bool IsLevelAbove { get; }

    /// <summary>Resistance at a moisture, carried on straight beyond the row. [MΩ]</summary>
    public double Megohm(double moisture) => Math.Pow(10, -Along(_moistures, _conductances, moisture));

    /// <summary>Moisture at a resistance, carried on straight beyond the row. [kg kg⁻¹]</summary>
    public double Moisture(double megohm) => Math.Max(0, Along(_conductances, _moistures, -Math.Log10(megohm)));

    private static double Along(double[] rising, double[] values, double at)
    {
        var above = Array.FindIndex(rising, one => one >= at);
        var i = Math.Clamp(above < 0 ? rising.Length - 1 : above, 1, rising.Length - 1);
        return values[i - 1] + (values[i] - values[i - 1]) * (at - rising[i - 1]) / (rising[i] - rising[i - 1]);
    }
}
