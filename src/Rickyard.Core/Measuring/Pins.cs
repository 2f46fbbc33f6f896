namespace Rickyard.Core.Measuring;

/// <summary>How a pair of pins meets the wood.</summary>
/// <param name="Place">Where.</param>
/// <param name="Depth">Depth of the tips under the face they enter. [m]</param>
/// <param name="Insulated">Whether only the tips touch wood; bare pins feel every layer they pass, the wettest most.</param>
public sealed record Pins(PinPlace Place, double Depth = Pins.UsualDepth, bool Insulated = false)
{
    /// <summary>Depth of the needles behind the published resistance table, 5/16 in (James 1988, Table 1, footnote 1). [m]</summary>
    public const double UsualDepth = 0.0079375;
}
