namespace Rickyard.Testing.Approval;

/// <summary>A text is not the approved one.</summary>
/// <param name="message">Where it differs.</param>
public sealed class ApprovalException(string message) : Exception(message);
