namespace Rickyard.Core.Measuring;

/// <summary>Whether a meter showed a number or went off its scale.</summary>
public enum ShownRange
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>Over range: wetter than the number it stands beside (or than the meter can show).</summary>
    Over,

    /// <summary>Under range: drier than the number it stands beside (or than the meter can show).</summary>
    Under,
}
