using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Store;

/// <summary>Finds the weather that a case names.</summary>
/// <param name="folder">Folder of the case file, from which its paths are meant.</param>
public sealed class WeatherSource(string folder)
{
    /// <summary>The weather, or what kept it from being read: named by its path in the case, with file and line where the fault lies inside.</summary>
    public Result<NamedWeather> Read(WeatherName name) => name.File is { } file ? FromFile(file) : FromPlace(name.NormalsPlace!);

    private Result<NamedWeather> FromFile(string file)
    {
        var bytes = InputFiles.ReadBytes(Path.Combine(folder, file));
        if (!bytes.TryGet(out var stored)) return ResultOf.Failure<NamedWeather>(bytes.Problems);
        var text = WeatherText.Decode(stored, file);
        if (!text.TryGet(out var plain)) return ResultOf.Failure<NamedWeather>(text.Problems);
        var weather = WeatherReader.Read(file, plain);
        return weather.TryGet(out var hours) ? ResultOf.Success(new NamedWeather(hours, null)) : ResultOf.Failure<NamedWeather>(weather.Problems);
    }

    private static Result<NamedWeather> FromPlace(string place)
    {
        var normals = NormalsCatalogue.Find(place);
        return normals.TryGet(out var found) ? ResultOf.Success(new NamedWeather(null, found)) : ResultOf.Failure<NamedWeather>(normals.Problems);
    }
}
