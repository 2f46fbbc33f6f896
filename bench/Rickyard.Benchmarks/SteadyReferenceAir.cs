using Rickyard.Core.Air;

namespace Rickyard.Benchmarks;

/// <summary>Problem A: 70 °C and 10 % relative humidity throughout.</summary>
internal sealed class SteadyReferenceAir : IReferenceAir
{
    private readonly MeanAir _air = new(70, SaturationPressure.Of(343.15), 0.10 * SaturationPressure.Of(343.15), 0.10);

    public MeanAir Mean(double time, double step) => _air;
}
