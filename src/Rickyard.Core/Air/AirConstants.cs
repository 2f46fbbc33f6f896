namespace Rickyard.Core.Air;

/// <summary>Constants of moist air as ASHRAE Handbook Fundamentals 2017, ch. 1 uses them.</summary>
public static class AirConstants
{
    /// <summary>Gas constant of dry air (ASHRAE 2017, ch. 1, eq. 1). [J kg⁻¹ K⁻¹]</summary>
    public const double DryAirGasConstant = 287.042;

    /// <summary>Gas constant of water vapour (ASHRAE 2017, ch. 1, eq. 2). [J kg⁻¹ K⁻¹]</summary>
    public const double VaporGasConstant = 461.524;

    /// <summary>Molar mass of water over that of dry air (ASHRAE 2017, ch. 1, eq. 20). [–]</summary>
    public const double MolarMassRatio = 0.621945;

    /// <summary>Heat capacity of dry air at constant pressure (ASHRAE 2017, ch. 1, eq. 30); 0.8 % low at 400 K. [J kg⁻¹ K⁻¹]</summary>
    public const double DryAirHeatCapacity = 1006;

    /// <summary>Heat capacity of water vapour at constant pressure (ASHRAE 2017, ch. 1, eq. 30). [J kg⁻¹ K⁻¹]</summary>
    public const double VaporHeatCapacity = 1860;
}
