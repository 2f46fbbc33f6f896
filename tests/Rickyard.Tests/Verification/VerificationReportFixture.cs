using Rickyard.Core.Verification;
using Xunit;

namespace Rickyard.Tests.Verification;

/// <summary>One run of the whole verification, shared by the tests that look at it.</summary>
public sealed class VerificationReportFixture
{
    public VerificationReport Report { get; } = VerificationRun.Run(cancellation: TestContext.Current.CancellationToken);
}
