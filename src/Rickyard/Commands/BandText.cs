using Rickyard.Core.Measuring;

namespace Rickyard.Commands;

/// <summary>Reads the cook's band of an option, such as "18-20 %"; whatever is wrong goes to the reading.</summary>
internal static class BandText
{
    public static (double Low, double High)? Read(string text, OptionReading reading)
    {
        var read = ShownBand.Read(text, "--band");
        foreach (var problem in read.Problems) reading.Wrong(problem);
        return read.TryGet(out var band) ? (band.Low, band.High) : null;
    }
}
