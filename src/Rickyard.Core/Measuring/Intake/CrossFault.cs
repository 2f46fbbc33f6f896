namespace Rickyard.Core.Measuring.Intake;

/// <summary>A reading that is right by itself and cannot be beside the others.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Column">What of it.</param>
/// <param name="WhatIsWrong">Beside which, and why.</param>
/// <param name="WhatToDo">What would mend it.</param>
internal sealed record CrossFault(TakenReading Reading, string Column, string WhatIsWrong, string WhatToDo)
{
    /// <summary>The reading as left out.</summary>
    public LeftOutReading LeftOut()
    {
        var faults = new RowFaults(Reading.Given);
        faults.Wrong(Column, WhatIsWrong, WhatToDo);
        return faults.LeftOut();
    }
}
