using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>What a search has to say besides its answer.</summary>
internal static class ScheduleNotes
{
    internal static IReadOnlyList<string> Of(BoxPlan plan, GoalMeasure goal, TrialResults tried, ScheduleCandidate best)
    {
        List<string> notes = [];
        if (goal.Goal == ChargeGoal.Even && !double.IsNaN(best.Celsius)) notes.Add(Humid(goal, tried, best));
        if (plan.Box.Vent is { Flow: 0, Opening: 0 }) notes.Add("The box has no vent, only its leaks: settings of humidity could not be tried.");
        if (plan.Box.Heater.Power <= 0) notes.Add("The box has no heater: its temperature is what sun and weather make it, and only pulls and humidity were tried.");
        notes.Add("The energy of candidates counts the whole charge as staying in to the last pull; that of the schedule chosen is of its own run, pulls and all.");
        return notes;
    }

    /// <summary>What air alone would need to hold the shell at the goal, and what this box came to.</summary>
    private static string Humid(GoalMeasure goal, TrialResults tried, ScheduleCandidate best)
    {
        var needed = SorptionIsotherm.At(best.Celsius).Activity(goal.Middle);
        var reached = tried.Tracks.Where(track => track.Settings.Celsius == best.Celsius).Max(track => track.Series.AirHumidity[track.Days.Length / 2]);
        return Invariant($"To hold a shell at {100 * goal.Middle:0.#} % dry basis by the air alone at {best.Celsius:0} °C, it would need {100 * needed:0} % relative humidity; with the vent nearly shut this charge held at most {100 * reached:0} % halfway through. So the evening out is done by a closed rest.");
    }
}
