namespace Rickyard.Core.Wood;

/// <summary>How well a value is vouched for.</summary>
public enum Mark
{
    /// <summary>Read from the printed table or numbered equation of the cited work, or from its public data file.</summary>
    Table,

    /// <summary>The cited table as another public source restates it.</summary>
    SecondaryTable,

    /// <summary>A statement in the text of the cited work or of one that quotes it.</summary>
    Text,

    /// <summary>Of the cited work but filled in from memory; to be checked.</summary>
    FromMemory,

    /// <summary>Derived from cited values; no new measurement.</summary>
    Computed,

    /// <summary>Another wood's value in place of one that nobody published.</summary>
    StandIn,
}
