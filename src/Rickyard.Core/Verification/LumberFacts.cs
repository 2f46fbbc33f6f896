using NodaTime.Text;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Tables;

namespace Rickyard.Core.Verification;

/// <summary>Published times of air-dried and indoor-dried boards beside the model.</summary>
internal static class LumberFacts
{
    private const double Twenty = 0.20;
    private const double Ten = 0.10;

    internal static IEnumerable<BesideFact> All(CancellationToken cancellation) =>
        [.. DataRow.Read("Verification/facts_lumber").Select(row => Outdoors(row, cancellation)), .. Indoors(cancellation), .. Thickness(cancellation)];

    private static BesideFact Outdoors(DataRow row, CancellationToken cancellation)
    {
        var rack = new RackPeriod(null, new(null, row.Text("place")), new(RackCover.Top, RackSun.Shade));
        var board = SpeciesCase.Of(row.Text("species"), Board(row.Number("inches")), LocalDatePattern.Iso.Parse(row.Text("start")).Value, rack, 365, 5);
        var days = TypicalRun.Of(board, cancellation).DaysTo(Twenty);
        return new("Boards outdoors", row.Text("statement"), row.Number("low"), row.Number("high"), days, "days to 20 %", row.Text("source"));
    }

    private static IEnumerable<BesideFact> Indoors(CancellationToken cancellation) =>
        from wood in new[] { (Species: "black cherry", Low: 90.0, High: 90.0), (Species: "white oak", Low: 90, High: 150) }
        from inches in new[] { 1, 2 }
        select new BesideFact(
            "Boards indoors", $"{wood.Species}, {inches} in", wood.Low, wood.High, Indoors(wood.Species, inches, cancellation), "days to 10 %",
            "Forest Service NC-228, abstract: 1 and 2 in together, households in southern Illinois; 21 °C and 40 % taken");

    private static double Indoors(string species, int inches, CancellationToken cancellation) =>
        TypicalRun.Of(SpeciesCase.Of(species, Board(inches), new(2024, 1, 1), new SteadyPeriod(null, 21, 0.40, null), 500, 5), cancellation).DaysTo(Ten);

    private static IEnumerable<BesideFact> Thickness(CancellationToken cancellation)
    {
        const double celsius = 60;
        double planed = KilnBoard.Days(1, celsius, cancellation), rough = KilnBoard.Days(1.125, celsius, cancellation), thicker = KilnBoard.Days(1.09375, celsius, cancellation);
        yield return new(
            "Thickness", "red oak planed 1/8 in thinner before drying: time saved", 9, 10, 100 * (1 - planed / rough), "%", "Forest Products Laboratory: just under 10 %");
        yield return new("Thickness", "red oak 3/32 in thicker: time added", 10, 15, 100 * (thicker / planed - 1), "%", "Forest Products Laboratory");
    }

    private static Split Board(double inches) => Split.Block(Length.FromInches(inches), Length.FromInches(6), Length.FromInches(96));
}
