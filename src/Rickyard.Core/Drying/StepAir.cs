namespace Rickyard.Core.Drying;

/// <summary>Air over one step: the means of <see cref="AirSeries"/> that drive the same flux as the air that varies within it.</summary>
/// <param name="Kelvins">Mean temperature. [K]</param>
/// <param name="VaporPressure">Mean vapour pressure. [Pa]</param>
/// <param name="SaturationGain">Mean saturation pressure over saturation pressure at the mean temperature, 1 or a little more.</param>
/// <param name="MobilityGain">The same of diffusivity, which rises with temperature as exp(−5280 K / T).</param>
/// <param name="ConvectiveCoefficient">[W m⁻² K⁻¹]</param>
/// <param name="AbsorbedRadiation">[W m⁻²]</param>
/// <param name="RainOnSides">[kg m⁻² s⁻¹]</param>
/// <param name="RainOnEnds">[kg m⁻² s⁻¹]</param>
/// <param name="FreshAir">Harmonic mean, as resistances add. [m s⁻¹]</param>
/// <param name="RadiantView">Part of what the faces see that is at the temperature of the air, 0 to 1.</param>
public readonly record struct StepAir(
    double Kelvins, double VaporPressure, double SaturationGain, double MobilityGain, double ConvectiveCoefficient,
    double AbsorbedRadiation, double RainOnSides, double RainOnEnds, double FreshAir, double RadiantView = 1);
