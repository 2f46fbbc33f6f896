namespace Rickyard.Learn;

/// <summary>A row that was not learnt from.</summary>
/// <param name="Place">The table, or "readings" for those in the case.</param>
/// <param name="Line">Its line, or its place in the list, from 1.</param>
/// <param name="Why">What is wrong with it.</param>
/// <param name="WhatToDo">What would let it in.</param>
internal sealed record LeftOutRow(string Place, int Line, string Why, string WhatToDo);
