using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using Rickyard.Learn;

namespace Rickyard.Tests.Learn;

/// <summary>A meter that knows one scale and shows two points too much on it.</summary>
internal sealed class InventedMeter : IMeterBand
{
    public Result<CookBand> Translate(double low, double high, string scale, Species species) => scale == "Douglas-fir"
        ? ResultOf.Success(new CookBand(low - 0.02, high - 0.02, scale, low, high))
        : ResultOf.Failure<CookBand>("--scale", $"\"{scale}\" is no scale that is known here.", "Give \"Douglas-fir\".");
}
