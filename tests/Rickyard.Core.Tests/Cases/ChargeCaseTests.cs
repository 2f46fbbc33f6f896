using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

public sealed class ChargeCaseTests
{
    [Fact]
    public void Classes_are_understood_and_fall_back_on_the_groups_at_the_top()
    {
        var charge = SampleCase.Read(SampleBoxCase.Text).Charge;
        Assert.Equal([("small", 40, ShelfPlace.Warm, 1.0), ("large", 20, ShelfPlace.Cool, 0.5)], charge.Select(one => (one.Name, one.Pieces, one.Shelf, one.ExposedShare)));
        Assert.Equal([0.0762, 0.1016], charge.Select(one => Math.Round(one.Wood.Split.Outer, 6)));
        Assert.Equal([0.10, 0.15], charge.Select(one => one.Wood.SizeSpread));
        Assert.All(charge, one => Assert.Equal(0.35, one.Wood.Start.Core));
    }

    [Fact]
    public void Class_is_a_case_of_its_own_in_the_same_box()
    {
        var drying = SampleCase.Read(SampleBoxCase.Text);
        Assert.All(drying.Charge, one =>
        {
            Assert.Equal((8.0, 0.25, one.Pieces), (one.Wood.Days, one.Wood.ReportEvery, one.Wood.Pieces));
            Assert.Same(drying.Periods[0], Assert.Single(one.Wood.Periods));
            Assert.Empty(one.Wood.Charge);
        });
    }

    [Fact]
    public void Case_itself_is_that_of_the_first_class()
    {
        var drying = SampleCase.Read(SampleBoxCase.Text);
        Assert.Equal("Cabinet", drying.Name);
        Assert.Equal((drying.Charge[0].Wood.Split, 40, 0.10), (drying.Split, drying.Pieces, drying.SizeSpread));
    }

    [Fact]
    public void Class_may_bring_everything_of_its_own()
    {
        const string Own = """
            [ { "wood": { "species": "sugar maple" }, "split": { "shape": "round", "length": "40 cm", "diameter": "8 cm" }, "start": { "moisture": "green" }, "pieces": 9 } ]
            """;
        var text = new[] { "wood", "split", "start" }.Aggregate(SampleBoxCase.Text, (now, key) => SampleCase.Change(now, key, null));
        var drying = SampleCase.Read(SampleCase.Change(text, "charge", Own));
        var only = Assert.Single(drying.Charge);
        Assert.Equal(("class 1", "sugar maple", true, 0.10), (only.Name, only.Wood.Species.CommonName, only.Wood.Start.IsGreen, only.Wood.SizeSpread));
        Assert.False(drying.Start.IsDated);
        foreach (var part in new[] { "Where in the box", "How close", "within a class" })
            Assert.Contains(drying.Assumptions, said => said.Contains(part, StringComparison.Ordinal));
    }

    [Fact]
    public void Day_at_the_top_holds_for_classes_with_a_start_of_their_own()
    {
        var text = SampleCase.Change(SampleBoxCase.Text, "charge.0.start", """{ "moisture": "20 % dry basis" }""");
        Assert.All(SampleCase.Read(text).Charge, one => Assert.Equal(new(2026, 3, 1), one.Wood.StartDate));
    }

    [Fact]
    public void Lot_of_a_case_without_a_charge_is_its_only_class()
    {
        var text = SampleCase.Change(SampleCase.Change(SampleBoxCase.Text, "charge", null), "lot", """{ "pieces": 30, "size spread": "20 %" }""");
        var drying = SampleCase.Read(text);
        var only = Assert.Single(drying.Charge);
        Assert.Equal(("Cabinet", 30, ShelfPlace.Middle, 0.8, 0.20), (only.Name, only.Pieces, only.Shelf, only.ExposedShare, only.Wood.SizeSpread));
        Assert.Equal(1, Assert.Single(SampleCase.Read(SampleCase.Change(text, "lot", null)).Charge).Pieces);
    }

    [Fact]
    public void Case_without_a_box_has_no_charge() => Assert.Empty(SampleCase.Read(SampleCase.Text).Charge);
}
