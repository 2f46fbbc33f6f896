namespace Rickyard.Core.Boxes.Changes;

/// <summary>What a change would win.</summary>
/// <param name="Change">The change, alone.</param>
/// <param name="TimeShare">Time it then takes to take as much water off each kilogram of wood as now by the end of the first drying, over the time now; above 1 it would be slower.</param>
public sealed record ChangeGain(BoxChange Change, double TimeShare);
