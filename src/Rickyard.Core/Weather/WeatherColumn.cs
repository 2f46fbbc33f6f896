namespace Rickyard.Core.Weather;

/// <summary>A column that is read.</summary>
/// <param name="Index">Place in the row, from 0.</param>
/// <param name="Header">As written.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Unit">As written; null: the header names none.</param>
internal sealed record WeatherColumn(int Index, string Header, string Name, string? Unit);
