using Rickyard.Core.Boxes;
using static System.FormattableString;

namespace Rickyard.Core.Cases;

/// <summary>Reads the glazing through which the sun heats a box.</summary>
internal static class GlazingSection
{
    /// <summary>Part of all sides that glazing can take at most: floor and something to fix it to are left. [–]</summary>
    private const double MostGlazed = 0.9;

    public static BoxSun? Read(CaseObject box, BoxInside inside, BoxAmbient ambient, CaseFindings findings)
    {
        if (box.Group("sun", "glazing", "gain", "conductance", "over level") is not { } sun) return null;
        if (ambient.Weather is null) findings.Wrong(sun.Path, "The air outside the box is steady and brings no sun.", "Give \"ambient\" as \"weather\" or \"normals\", or leave \"sun\" out.");
        var area = sun.NeededQuantity("glazing", BoxLimits.Glazing) ?? 0;
        if (area > MostGlazed * inside.Surface) findings.Wrong(sun.PathOf("glazing"), Invariant($"It is {area:0.##} m², but all sides of the box together have {inside.Surface:0.##} m² and some must be wall."), Invariant($"Give at most {MostGlazed * inside.Surface:0.##} m2."));
        if (!sun.Has("over level")) findings.Assume("How the glazing stands to the sun was not given: as much sun as on level ground.");
        return new(
            Math.Min(area, MostGlazed * inside.Surface),
            sun.QuantityOr("gain", BoxLimits.SunGain, 0.60, "How much of the sun becomes heat inside was not given: 60 % (judgement: two clear layers, a dark inside)."),
            sun.QuantityOr("conductance", BoxLimits.Conductance, 3.5, "The conductance of the glazing was not given: 3.5 W/m²K (judgement: two thin layers)."),
            sun.Number("over level", 0.1, 3) ?? 1);
    }
}
