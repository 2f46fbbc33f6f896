using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Racks;

namespace Rickyard.Core.Learning.Unknowns;

/// <summary>An unknown in words and in a unit a person knows.</summary>
/// <param name="Name">What.</param>
/// <param name="Unit">Unit of the value.</param>
/// <param name="Value">Value that a standard normal number stands for.</param>
internal sealed record UnknownWords(string Name, string Unit, Func<double, double> Value)
{
    private const string Times = "× the usual";

    /// <summary>Of an unknown in a case.</summary>
    internal static UnknownWords Of(Unknown unknown, DryingCase drying)
    {
        var rack = new RackUncertainty();
        UnknownWords Factor(string name, double spread, string unit = Times) => new(name, unit, number => Math.Exp(spread * number));
        return unknown switch
        {
            Unknown.Start => new("start moisture", "% dry basis", number => 100 * drying.Start.Core * Math.Max(0, 1 + MemberWood.StartSpreadOf(drying) * number)),
            Unknown.Rate => Factor("drying rate of the wood", drying.Species.RateFactor.SpreadLog),
            Unknown.FreeWater => Factor("free water's way out", WaterMobility.FreeWaterSpreadLog),
            Unknown.Bark => Factor("what the bark lets through", LaneWood.BarkSpreadLog),
            Unknown.Density => new("basic density", "kg/m³", number => drying.BasicDensity * Math.Exp(drying.Species.BasicDensitySpread * number)),
            Unknown.Size => Factor("width of the splits", MemberWood.SizeSpreadOf(drying), "× as described"),
            Unknown.Sorption => Factor("moisture the wood keeps in given air", MemberWood.SorptionSpread),
            Unknown.Wind => Factor("air between the splits", rack.Wind, "× as described"),
            Unknown.Rain => Factor("rain that reaches them", rack.Rain, "× as described"),
            _ => Factor("sun that reaches them", rack.Sun, "× as described"),
        };
    }
}
