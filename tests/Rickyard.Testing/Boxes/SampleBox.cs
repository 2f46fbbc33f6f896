using NodaTime;
using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Testing.Boxes;

/// <summary>Invented boxes and charges, and short ways to run them.</summary>
internal static class SampleBox
{
    /// <summary>A cabinet of half a cubic metre with thin insulation, 2 kW, a small fan and a small vent.</summary>
    internal static BoxDescription Cabinet { get; } = new()
    {
        Volume = 0.6,
        WallArea = 4.4,
        Height = 1.5,
        WallConductance = 1.5,
        WallHeatCapacity = 8000,
        Heater = new(2000, 4, 0, HeaterFuel.Electricity, 1),
        Fan = new(0.5, 0.05, 30),
        Vent = new(0, 0.004, null),
        LeakOpening = 0.001,
    };

    /// <summary>The box standing in a room, one stage to the end.</summary>
    internal static BoxPlan Plan(BoxDescription box, double? celsius, StageKind kind = StageKind.Drying, double outsideCelsius = 15, double outsideHumidity = 0.6) => new()
    {
        Box = box,
        Ambient = new(outsideCelsius, outsideHumidity),
        Stages = [new(kind, null, celsius)],
    };

    /// <summary>Wedges of oak in bark, 40 cm long.</summary>
    internal static ChargeClass Class(double radius, int pieces, double moisture = 0.6, double celsius = 10, string species = "northern red oak", ShelfPlace shelf = ShelfPlace.Middle)
    {
        var wood = SpeciesCatalogue.Find(species).Value!;
        var split = Split.Wedge(Length.FromMetres(radius), Angle.FromDegrees(60), Length.FromMetres(0.4));
        return new($"{species} {radius}", new()
        {
            Name = species,
            Species = wood,
            BasicDensity = wood.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = split,
            Start = new(moisture, null, null, false, celsius, new LocalDate(2026, 1, 1)),
            Periods = [],
            Days = 14,
            ReportEvery = 1,
        }, pieces, shelf, 0.8);
    }

    /// <summary>A box with no air of its own going in or out: no vent, no leaks.</summary>
    internal static BoxDescription Shut(this BoxDescription box) => box with { Vent = BoxVent.Shut, LeakOpening = 0 };

    /// <summary>Oven-dry mass of all pieces of a class. [kg]</summary>
    internal static double DryMass(this ChargeClass charged) => charged.Pieces * charged.Wood.Split.Volume * charged.Wood.BasicDensity;

    /// <summary>Run it in steady air outside, reports evenly spread.</summary>
    internal static BoxTrace Run(BoxPlan plan, IReadOnlyList<ChargeClass> charge, double days, int reports = 14, GridResolution? resolution = null, StepControl? control = null) =>
        Run(plan, charge, OutsideSeries.Steady(plan.Ambient.Celsius, plan.Ambient.RelativeHumidity), days, reports, resolution, control);

    /// <summary>Run it in any air outside.</summary>
    internal static BoxTrace Run(
        BoxPlan plan, IReadOnlyList<ChargeClass> charge, OutsideSeries outside, double days, int reports = 14, GridResolution? resolution = null, StepControl? control = null)
    {
        double[] times = [.. Enumerable.Range(0, reports + 1).Select(i => days * i / reports)];
        return new BoxRun(plan, charge, outside, times, resolution ?? GridResolution.Default, control ?? StepControl.Forecast).Run(new HashSet<int>(), CancellationToken.None);
    }
}
