using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Learn;

/// <summary>Translates a band from a meter's scale to moisture of a wood.</summary>
internal interface IMeterBand
{
    /// <summary>The band in this wood, or what is wrong with the scale or the band on it.</summary>
    /// <param name="low">Lower edge as the meter shows it. [kg kg⁻¹]</param>
    /// <param name="high">Upper edge as the meter shows it. [kg kg⁻¹]</param>
    /// <param name="scale">The scale as it was typed.</param>
    /// <param name="species">The wood.</param>
    Result<CookBand> Translate(double low, double high, string scale, Species species);
}
