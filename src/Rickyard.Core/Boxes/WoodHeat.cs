using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>Heat content of a class at the moisture it has come to, with what it exchanges over a step, as a rising function of its temperature.</summary>
/// <param name="Moisture">Mean. [kg kg⁻¹]</param>
/// <param name="DryMass">[kg]</param>
/// <param name="Wetting">Heat of wetting given off. [J kg⁻¹]</param>
/// <param name="Exchanged">Heat lost over the step per kelvin; 0 for the content alone. [J K⁻¹]</param>
internal readonly record struct WoodHeat(double Moisture, double DryMass, double Wetting, double Exchanged)
{
    private const int MostRounds = 60;
    private const double Coldest = 150, Hottest = 500, Close = 1e-10;

    /// <summary>[J K⁻¹]</summary>
    internal double Slope(double kelvins) => DryMass * WoodEnthalpy.Capacity(Moisture, kelvins) + Exchanged;

    /// <summary>
    /// Temperature at which content and exchange are what is known: Newton within a bracket, since the melting of free water kinks the function so sharply that bare Newton
    /// leaps to and fro across it. [K]
    /// </summary>
    internal double KelvinsAt(double known, double guess)
    {
        double kelvins = guess, low = Coldest, high = Hottest;
        for (var round = 0; round < MostRounds; round++)
        {
            var excess = DryMass * (WoodEnthalpy.Sensible(Moisture, kelvins) - Wetting) + Exchanged * kelvins - known;
            if (excess > 0) high = kelvins; else low = kelvins;
            var next = kelvins - excess / Slope(kelvins);
            if (!(next >= low && next <= high)) next = (low + high) / 2;
            var moved = Math.Abs(next - kelvins);
            kelvins = next;
            if (moved < Close) break;
        }

        return kelvins;
    }
}
