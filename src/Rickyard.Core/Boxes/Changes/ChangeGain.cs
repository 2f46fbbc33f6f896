namespace Rickyard.Core.Boxes.Changes;

/// <summary>What a change would win.</summary>
/// <param name="Change">The change, alone.</param>
/// <param name="TimeShare">Time it then takes for the cores to come as low as they do now by the end of drying, over the time now; above 1 it would be slower.</param>
public sealed record ChangeGain(BoxChange Change, double TimeShare);
