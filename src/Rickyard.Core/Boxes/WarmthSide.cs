namespace Rickyard.Core.Boxes;

/// <summary>One of two airs and what it does to a split.</summary>
/// <param name="Celsius">[°C]</param>
/// <param name="RelativeHumidity">0 to 1.</param>
/// <param name="SaturationPressure">Vapour pressure over wet wood of that temperature. [Pa]</param>
/// <param name="VaporPressure">Of the air. [Pa]</param>
/// <param name="Emc">Where the wood would come to rest. [kg kg⁻¹]</param>
/// <param name="BoundDiffusivity">Of water in cell walls across the grain at the target. [m² s⁻¹]</param>
/// <param name="FreeDiffusivity">Of free water across the grain at the start moisture; 0 where there is none. [m² s⁻¹]</param>
/// <param name="SurfaceShare">Part of the drop in vapour pressure that lies outside the wood, when the mean is halfway from start to target; null if never. 0 to 1.</param>
/// <param name="DaysToCore">Until the core is at the target; null if it does not get there. [d]</param>
/// <param name="DaysToMean">The same of the mean. [d]</param>
/// <param name="MeanWhenCoreThere">Mean moisture when the core is at the target; null if it does not get there. [kg kg⁻¹]</param>
public sealed record WarmthSide(
    double Celsius, double RelativeHumidity, double SaturationPressure, double VaporPressure, double Emc, double BoundDiffusivity, double FreeDiffusivity,
    double? SurfaceShare, double? DaysToCore, double? DaysToMean, double? MeanWhenCoreThere)
{
    /// <summary>Saturation less what the air has: what drives the vapour off a wet face as warm as the air. [Pa]</summary>
    public double VaporDeficit => SaturationPressure - VaporPressure;
}
