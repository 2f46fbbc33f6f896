using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Core.Quantities;
using Rickyard.Testing;

namespace Rickyard.Core.Tests.Measuring.Intake;

/// <summary>Intake of the oak among the examples (start 15 March 2026, 420 days), with a correction that leaves every reading as it is.</summary>
internal static class OakIntake
{
    public const string Header = "date,piece,kind,place,value,unit,scale,temperature,note";

    public static string CaseText { get; } = File.ReadAllText(RepositoryFolder.Of("examples", "oak-on-a-rack.json"));

    public static DryingCase Case { get; } = CaseReader.Read(CaseText, "oak.json").Value!;

    public static ObservationIntake Of(DryingCase drying, LocalDate? today = null) => new(drying, today, (reading, _, _) => new(reading.Shown, reading.Shown, reading.Shown, MeterVerdict.Measured, 0.01, 0.01, []));

    public static Result<ObservationLog> Read(string text) => Of(Case).Read("oak.csv", text);

    public static ObservationLog Log(params IEnumerable<string> rows) => Read($"{Header}\n{string.Join('\n', rows)}").Value!;
}
