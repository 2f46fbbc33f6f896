using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Commands;

/// <summary>Every property of air that the program knows, with its unit.</summary>
internal static class AirSheet
{
    public static List<AirLine> Of(MoistAir air) =>
    [
        new("temperature_c", "temperature", air.Temperature.Celsius, 1, "°C"),
        new("temperature_f", "temperature", air.Temperature.Fahrenheit, 1, "°F"),
        new("relative_humidity_pct", "relative humidity (over water)", air.RelativeHumidity.Percent, 1, "%"),
        new("dew_point_c", "dew point (over water)", air.DewPoint.Celsius, 1, "°C"),
        new("dew_or_frost_point_c", "dew or frost point", air.DewOrFrostPoint.Celsius, 1, "°C"),
        new("wet_bulb_c", "wet bulb", air.WetBulb.Celsius, 1, "°C"),
        new("wet_bulb_f", "wet bulb", air.WetBulb.Fahrenheit, 1, "°F"),
        new("vapour_pressure_pa", "vapour pressure", air.VaporPressure.Pascals, 0, "Pa"),
        new("vapour_pressure_torr", "vapour pressure", UnitsNet.Pressure.FromPascals(air.VaporPressure.Pascals).Torrs, 2, "torr"),
        new("saturation_pressure_pa", "saturation pressure over water", Saturation(air), 0, "Pa"),
        new("vapour_pressure_deficit_pa", "vapour pressure deficit", Saturation(air) - air.VaporPressure.Pascals, 0, "Pa"),
        new("humidity_ratio_g_per_kg", "humidity ratio", 1000 * air.HumidityRatio.Fraction, 2, "g/kg dry air"),
        new("enthalpy_kj_per_kg", "enthalpy", air.Enthalpy / 1000, 1, "kJ/kg dry air"),
        new("specific_volume_m3_per_kg", "specific volume", air.SpecificVolume, 3, "m³/kg dry air"),
        new("density_kg_per_m3", "density", air.Density.KilogramsPerCubicMetre, 3, "kg/m³"),
        new("pressure_pa", "air pressure", air.Pressure.Pascals, 0, "Pa"),
        new("latent_heat_kj_per_kg", "latent heat of evaporation", LatentHeat.OfEvaporation(air.Temperature.Kelvins) / 1000, 0, "kJ/kg"),
        new("vapour_diffusivity_mm2_per_s", "diffusivity of vapour in air", 1e6 * AirProperties.VaporDiffusivity(air.Temperature.Kelvins, air.Pressure.Pascals), 1, "mm²/s"),
        new("emc_pct_dry", "EMC of wood in it", EquilibriumMoisture.From(air).PercentDry, 1, "% dry basis"),
    ];

    private static double Saturation(MoistAir air) => SaturationPressure.OverWater(air.Temperature.Kelvins);
}
