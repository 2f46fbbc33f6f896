using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Core.Verification;

/// <summary>A green piece of a species in one kind of air, for facts beside the model.</summary>
internal static class SpeciesCase
{
    internal static DryingCase Of(string species, Split split, LocalDate start, Period air, double days, double every, double? moisture = null)
    {
        var wood = SpeciesCatalogue.Find(species).Value!;
        return new()
        {
            Name = species,
            Species = wood,
            BasicDensity = wood.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = split,
            Start = new(moisture ?? wood.GreenMoisture.Mean, null, null, moisture is null, 10, start),
            Periods = [air],
            Days = days,
            ReportEvery = every,
        };
    }
}
