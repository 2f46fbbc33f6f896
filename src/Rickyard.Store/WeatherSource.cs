using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Store;

/// <summary>Finds the weather that a case names and makes of it years as they may come.</summary>
/// <param name="folder">Folder of the case file, from which its paths are meant.</param>
public sealed class WeatherSource(string folder)
{
    /// <summary>A place whose normals are nearer than this may stand for the months a record does not cover. [km]</summary>
    private const double NearEnough = 150;

    /// <summary>The weather, or what kept it from being read: named by its path in the case, with file and line where the fault lies inside.</summary>
    public Result<WeatherScenario> Read(WeatherName name) => name.File is { } file ? FromFile(file) : FromPlace(name.NormalsPlace!);

    /// <summary>The weather of every rack in a case and outside its box, or every problem met.</summary>
    public Result<IReadOnlyDictionary<WeatherName, WeatherScenario>> ReadAll(DryingCase drying)
    {
        Dictionary<WeatherName, WeatherScenario> found = [];
        List<Problem> problems = [];
        foreach (var name in drying.Weather)
        {
            var weather = Read(name);
            if (weather.TryGet(out var scenario)) found[name] = scenario;
            problems.AddRange(weather.Problems);
        }

        return problems.Count == 0 ? ResultOf.Success<IReadOnlyDictionary<WeatherName, WeatherScenario>>(found) : ResultOf.Failure<IReadOnlyDictionary<WeatherName, WeatherScenario>>(problems);
    }

    private Result<WeatherScenario> FromFile(string file)
    {
        var bytes = InputFiles.ReadBytes(Path.Combine(folder, file));
        if (!bytes.TryGet(out var stored)) return ResultOf.Failure<WeatherScenario>(bytes.Problems);
        var text = WeatherText.Decode(stored, file);
        if (!text.TryGet(out var plain)) return ResultOf.Failure<WeatherScenario>(text.Problems);
        var weather = WeatherReader.Read(file, plain);
        return weather.TryGet(out var hours) ? Scenario(hours) : ResultOf.Failure<WeatherScenario>(weather.Problems);
    }

    /// <summary>A typical year stands for any year. A record is what it was, and normals near it (else a full year of itself) stand for the rest.</summary>
    private static Result<WeatherScenario> Scenario(HourlyWeather hours)
    {
        if (hours.Typical) return WeatherScenario.FromTypicalYear(hours);
        return Near(hours) is { } normals ? ResultOf.Success(WeatherScenario.FromNormals(normals, hours)) : WeatherScenario.FromTypicalYear(hours, hours);
    }

    private static MonthlyNormals? Near(HourlyWeather hours)
    {
        if (!double.IsFinite(hours.Latitude) || !double.IsFinite(hours.Longitude)) return null;
        var (place, kilometres) = NormalsCatalogue.Nearest(hours.Latitude, hours.Longitude);
        return kilometres <= NearEnough ? place : null;
    }

    private static Result<WeatherScenario> FromPlace(string place)
    {
        var normals = NormalsCatalogue.Find(place);
        return normals.TryGet(out var found) ? ResultOf.Success(WeatherScenario.FromNormals(found)) : ResultOf.Failure<WeatherScenario>(normals.Problems);
    }
}
