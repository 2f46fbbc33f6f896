namespace Rickyard.Core.Verification;

/// <summary>A published fact beside the same thing of the model: not scored, since the source leaves too much open, or the fact is an input of the model.</summary>
/// <param name="Subject">What kind of fact.</param>
/// <param name="Statement">What it is about.</param>
/// <param name="Low">Printed value, or its lower end; null where only a direction is printed.</param>
/// <param name="High">Its upper end.</param>
/// <param name="Model">What the model has or does; infinite for days never reached.</param>
/// <param name="Unit">Unit of these.</param>
/// <param name="Source">Who printed it, and what was taken where the source is silent.</param>
public sealed record BesideFact(string Subject, string Statement, double? Low, double? High, double Model, string Unit, string Source);
