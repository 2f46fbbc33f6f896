using Rickyard.Core.Quantities;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>A reading that is not learnt from.</summary>
/// <param name="Place">Name of the table, or "readings" for those of a case.</param>
/// <param name="Line">Line of the table, or place in the list, from 1.</param>
/// <param name="Given">What was written there.</param>
/// <param name="Problems">Each thing wrong with it, and what to do; at least one.</param>
public sealed record LeftOutReading(string Place, int Line, string Given, IReadOnlyList<Problem> Problems)
{
    /// <summary>All that is wrong, in one text.</summary>
    public string Why => string.Join(" ", Problems.Select(problem => problem.WhatIsWrong));

    /// <summary>All that would mend it, in one text.</summary>
    public string WhatToDo => string.Join(" ", Problems.Select(problem => problem.WhatToDo).Distinct());
}
