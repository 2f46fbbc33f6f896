using CsCheck;
using Rickyard.Core.Measuring.Profiles;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Profiles;

public sealed class ParabolicProfileTests
{
    [Fact]
    public void Every_shape_of_the_table_comes_out()
    {
        var rows = ReferenceTable.Read("Measuring/parabolic_profiles.csv");
        Assert.Equal(4, rows.Count);
        Assert.All(rows, row =>
        {
            var shape = Enum.Parse<ProfileShape>(row.Text("shape"));
            Assert.Equal(row.Number("mean_minus_surface"), ParabolicProfile.MeanShare(shape), 0.00005);
            Assert.Equal(row.Number("core_minus_mean"), 1 - ParabolicProfile.MeanShare(shape), 0.00005);
            Assert.Equal(row.Number("mean_depth"), ParabolicProfile.MeanDepth(shape), 0.00005);
        });
    }

    [Fact]
    public void Every_depth_of_a_slab_comes_out() => Assert.All(ReferenceTable.Read("Measuring/slab_pin_depth.csv"), row =>
        Assert.Equal(row.Number("reading_minus_surface_as_fraction_of_D"), new ParabolicProfile(ProfileShape.Slab, 0, 1).At(row.Number("pin_tip_depth_fraction_of_thickness")), 0.0001));

    // G1 to G3, derived: outer quarters 16 %, inner half 24 %.
    [Fact]
    public void Quarters_and_half_give_mean_surface_and_centre()
    {
        var slab = ParabolicProfile.FromQuarters(16, 24);
        Assert.Equal(20.0, slab.Mean, 0.01);
        Assert.Equal(9.33, slab.Surface, 0.01);
        Assert.Equal(25.33, slab.Core, 0.01);
    }

    // G4 to G6, derived: insulated pin at 1/4, 1/5 and 0.3 of the thickness.
    [Theory]
    [InlineData(0.25, 21.33)]
    [InlineData(0.20, 19.57)]
    [InlineData(0.30, 22.77)]
    public void Pin_of_that_slab_reads(double depth, double reading) => Assert.Equal(reading, ParabolicProfile.FromQuarters(16, 24).At(depth), 0.01);

    // G7: shell 4 %, core 10 %, whole section 7 % (user data on woodweb, "Measuring Moisture Gradient at the End of Kiln-Drying"; text).
    [Fact]
    public void Mean_of_a_section_lies_half_way_between_shell_and_core_half() => Assert.Equal(7, ParabolicProfile.FromQuarters(4, 10).Mean, 0.05);

    // G8 and G9, derived: surface 12 %, centre 30 %.
    [Theory]
    [InlineData(ProfileShape.Round, 21)]
    [InlineData(ProfileShape.Square, 20)]
    public void Mean_of_a_round_and_of_a_square(ProfileShape shape, double mean) => Assert.Equal(mean, new ParabolicProfile(shape, 12, 30).Mean, 0.01);

    [Fact]
    public void Two_pins_find_the_profile_they_were_read_in() => Gen.Select(Gen.Enum<ProfileShape>(), Gen.Double[0.05, 0.2], Gen.Double[0.05, 0.3]).Sample((shape, surface, core) =>
    {
        var profile = new ParabolicProfile(shape, surface, core);
        var found = ParabolicProfile.FromPins(shape, 0.1, profile.At(0.1), 0.4, profile.At(0.4));
        Assert.Equal(profile.Mean, found.Mean, 1e-12);
        Assert.Equal(profile.Mean, profile.At(ParabolicProfile.MeanDepth(shape)), shape == ProfileShape.Slab ? 1e-12 : 1e-9);
    }, iter: 200);

    [Fact]
    public void Driest_piece_has_its_surface_at_rest_with_the_air()
    {
        Assert.Equal(0.24 - (0.24 - 0.12) / 3, ParabolicProfile.DriestWith(ProfileShape.Slab, 0.24, 0.12).Mean, 1e-12);
        Assert.Equal(0.10, ParabolicProfile.DriestWith(ProfileShape.Slab, 0.10, 0.12).Mean, 1e-12);
    }

    [Fact]
    public void Depth_beyond_the_middle_or_one_depth_twice_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new ParabolicProfile(ProfileShape.Slab, 0.1, 0.2).At(0.6));
        Assert.Throws<ArgumentException>(() => ParabolicProfile.FromPins(ProfileShape.Slab, 0.2, 0.1, 0.2, 0.2));
    }
}
