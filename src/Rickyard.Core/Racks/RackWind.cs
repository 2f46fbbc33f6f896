namespace Rickyard.Core.Racks;

/// <summary>How the wind reaches a rack.</summary>
public enum RackWind
{
    /// <summary>A yard open to the wind, with hedges and houses at some distance.</summary>
    Open,

    /// <summary>Close behind a house, a dense hedge or other stacks.</summary>
    Sheltered,
}
