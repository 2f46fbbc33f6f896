using Rickyard.Core.Measuring;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Cases;

/// <summary>Reads the moisture the cook wants, as their own meter shows it.</summary>
internal static class CookSection
{
    private const string WantedBand = "Give two moistures as the meter shows them, lower first, such as \"18-20 %\".";
    private const string WantedScale = "Give the wood its scale is for, such as \"Douglas-fir\", or leave it out.";

    public static CooksBand? Read(CaseObject root, CaseFindings findings)
    {
        if (root.Group("cook", "band", "scale", "species") is not { } cook) return null;
        var band = cook.NeededText("band", WantedBand) is { } text ? findings.Kept(ShownBand.Read(text, cook.PathOf("band"))) : null;
        if (!cook.Has("scale")) findings.Assume("The scale of the cook's meter was not given: Douglas-fir.");
        var scale = cook.Text("scale", WantedScale) is { } name ? findings.Kept(MeterScale.Find(name, cook.PathOf("scale"))) : MeterScale.DouglasFir;
        var species = cook.Text("species", "Give the wood in which this band was found good, or leave it out.") is { } wood ? findings.Kept(SpeciesCatalogue.Find(wood, cook.PathOf("species"))) : null;
        return band is null || scale is null ? null : new(band.Low, band.High, scale, species);
    }
}
