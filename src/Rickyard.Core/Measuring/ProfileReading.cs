using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring;

/// <summary>
/// From a reading at one or two places to core, shell and mean, by the profile that the solver finds in this piece and no general rule: green wood of the same
/// moisture throughout dries in steady air until the places read so (physics.md, V5). Weather that changes makes the skin differ, which this does not know.
/// </summary>
public static class ProfileReading
{
    /// <summary>Finds the profile.</summary>
    /// <param name="drying">Split and wood; its start and periods do not count.</param>
    /// <param name="readings">One or two places and what they read, each above <paramref name="equilibrium"/>.</param>
    /// <param name="equilibrium">Moisture the air would dry such wood to, above 0. [kg kg⁻¹]</param>
    public static Result<InnerProfile> Of(DryingCase drying, IReadOnlyList<PlaceReading> readings, double equilibrium)
    {
        double least = readings.Min(reading => reading.Moisture), most = readings.Max(reading => reading.Moisture), full = WoodDensity.MaximumMoisture(drying.BasicDensity);
        List<Problem> problems = [];
        if (least <= equilibrium) problems.Add(TooDry(least, equilibrium));
        if (most >= full) problems.Add(TooWet(most, full));
        var start = Math.Min(full, Math.Max(drying.Species.GreenMoisture.Mean, 1.25 * most));
        return problems.Count > 0 ? ResultOf.Failure<InnerProfile>(problems) : new ProfileSearch(drying, readings, equilibrium, start).Best();
    }

    private static Problem TooDry(double reading, double equilibrium) => new(
        "reading",
        FormattableString.Invariant($"It was {100 * reading:0.#} %, but air that holds wood at {100 * equilibrium:0.#} % dries none to less."),
        "Give the air the wood has really been in, or read a place that has not yet come to balance with it.");

    private static Problem TooWet(double reading, double full) => new(
        "reading",
        FormattableString.Invariant($"It was {100 * reading:0.#} %, but such wood holds no more than {100 * full:0} % with all its pores full."),
        "Check the number and the wood; a meter above 28 % only says that it is wet.");
}
