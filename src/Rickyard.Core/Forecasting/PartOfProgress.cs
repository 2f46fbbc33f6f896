namespace Rickyard.Core.Forecasting;

/// <summary>The progress of one part of a longer work, told as progress of the whole.</summary>
/// <param name="Whole">Told how much of the whole is done, 0 to 1.</param>
/// <param name="From">Where the part begins in the whole, 0 to 1.</param>
/// <param name="Share">How much of the whole it is.</param>
internal sealed record PartOfProgress(IProgress<double> Whole, double From, double Share) : IProgress<double>
{
    /// <inheritdoc/>
    public void Report(double value) => Whole.Report(From + Share * value);

    /// <summary>One of several equal parts; null where nobody listens.</summary>
    internal static PartOfProgress? Of(IProgress<double>? whole, int number, int parts) => whole is null ? null : new(whole, number / (double)parts, 1.0 / parts);
}
