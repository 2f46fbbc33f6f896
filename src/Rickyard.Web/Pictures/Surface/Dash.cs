namespace Rickyard.Web.Pictures.Surface;

/// <summary>How a line is broken, so that lines differ by more than colour.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    None,

    /// <summary>Long dashes.</summary>
    Long,

    /// <summary>Short dashes.</summary>
    Short,

    /// <summary>Dots.</summary>
    Dots,
}
