namespace Rickyard.Core.Verification;

/// <summary>A published heating time beside the predicted one.</summary>
/// <param name="Species">As in the table.</param>
/// <param name="Size">Section in inches, as in the table.</param>
/// <param name="Depression">Wet-bulb depression. [K]</param>
/// <param name="PublishedMinutes">Minutes until the centre is at 56 °C.</param>
/// <param name="PredictedMinutes">The same predicted.</param>
public sealed record HeatingTime(string Species, string Size, double Depression, double PublishedMinutes, double PredictedMinutes)
{
    /// <summary>Predicted over published, less one.</summary>
    public double RelativeMiss => PredictedMinutes / PublishedMinutes - 1;
}
