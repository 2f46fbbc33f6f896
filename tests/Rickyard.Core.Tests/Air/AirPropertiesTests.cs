using Rickyard.Core.Air;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class AirPropertiesTests
{
    // Incropera and DeWitt, Table A.4 (from memory): two independent compilations agree within 1 %. Its densities
    // are those of 100 kPa.
    [Fact]
    public void Dry_air_meets_the_handbook_table()
    {
        foreach (var row in ReferenceTable.Read("Air/air_properties.csv"))
        {
            var kelvins = row.Number("temp_k");
            AssertNear(row.Number("density_kg_m3"), AirProperties.Density(kelvins, 100000), 0.002);
            AssertNear(1e-7 * row.Number("viscosity_1e7_pa_s"), AirProperties.Viscosity(kelvins), 0.01);
            AssertNear(1e-3 * row.Number("conductivity_1e3_w_mk"), AirProperties.Conductivity(kelvins), 0.01);
            AssertNear(row.Number("prandtl"), AirProperties.Prandtl(kelvins), 0.015);
        }
    }

    [Fact]
    public void Lewis_number_meets_the_worked_values()
    {
        foreach (var row in ReferenceTable.Read("Air/cylinder_convection.csv"))
            AssertNear(row.Number("lewis"), AirProperties.Lewis(row.Number("temp_c") + 273.15), 0.01);
    }

    // Incropera and DeWitt, Table A.8 (from memory): 0.26e-4 m²/s at 298 K, to two digits.
    [Fact]
    public void Vapour_diffusivity_meets_the_handbook() => Assert.Equal(0.26e-4, AirProperties.VaporDiffusivity(298, 101325), 0.005e-4);

    private static void AssertNear(double expected, double actual, double relative) => Assert.Equal(expected, actual, relative * expected);
}
