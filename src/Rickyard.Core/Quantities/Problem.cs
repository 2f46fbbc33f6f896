namespace Rickyard.Core.Quantities;

/// <summary>One thing wrong with what a person gave: where, what, and what to do about it.</summary>
/// <param name="Field">The key, option, file and line, or form field it belongs to, e.g. <c>split.length</c>.</param>
/// <param name="WhatIsWrong">What was given and why it cannot be.</param>
/// <param name="WhatToDo">What is allowed, with an example.</param>
public sealed record Problem(string Field, string WhatIsWrong, string WhatToDo)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Field}: {WhatIsWrong} {WhatToDo}";
}
