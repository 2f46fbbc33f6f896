using Rickyard.Core.Cases;
using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Weather;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class ChargeLearningTests
{
    [Fact]
    public void Each_class_of_a_charge_learns_from_its_own_readings()
    {
        var drying = CaseReader.Read(File.ReadAllText(RepositoryFolder.Of("examples", "cabinet.json")), "cabinet.json").Value!;
        var names = drying.Charge.Select(one => one.Name).ToArray();
        var plain = Run(drying, []);
        var now = Array.IndexOf(plain.Days, 5.0);
        double At(LearningRun run, int i) => run.Classes[i].Run.LotCore[now].Middle;
        var wetter = 1.2 * At(plain, names.Length - 1);
        var read = Run(drying, [Core(names[^1], 5, wetter), Core(names[^1], 5, wetter)]);
        Assert.Equal(names, read.Classes.Select(one => one.Name));
        Assert.Equal(At(plain, 0), At(read, 0), 1e-9);
        Assert.InRange(At(read, names.Length - 1), 1.03 * At(plain, names.Length - 1), wetter);
    }

    private static LearningRun Run(DryingCase drying, IReadOnlyList<Observation> looks) =>
        LearningForecast.Run(drying, looks, new(32, Draws: 400, Today: 5), new Dictionary<WeatherName, WeatherScenario>());

    private static OvenObservation Core(string name, double day, double moisture) => new(new(day, "", name, 1, "a bit of the core"), OvenPart.Core, moisture, 0.01);
}
