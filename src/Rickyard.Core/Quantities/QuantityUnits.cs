namespace Rickyard.Core.Quantities;

/// <summary>One kind of quantity as people write it: the spellings of its units, each with what it means in the unit kept inside.</summary>
/// <param name="name">With its article: "a length".</param>
/// <param name="adds">Whether several parts add up, as in "1 ft 4 in".</param>
/// <param name="allowed">The units as a message lists them.</param>
/// <param name="spellings">By spelling in lower case: from that unit to the unit kept inside.</param>
public sealed class QuantityUnits(string name, bool adds, string allowed, IReadOnlyDictionary<string, Func<double, double>> spellings)
{
    /// <summary>With its article: "a length".</summary>
    public string Name { get; } = name;

    /// <summary>Whether several parts add up, as in "1 ft 4 in".</summary>
    public bool Adds { get; } = adds;

    /// <summary>The units as a message lists them.</summary>
    public string Allowed { get; } = allowed;

    /// <summary>Length, kept in metre.</summary>
    public static QuantityUnits Length { get; } = new("a length", true, "mm, cm, m, in or ft", new Dictionary<string, Func<double, double>>
    {
        ["mm"] = value => UnitsNet.Length.FromMillimeters(value).Meters,
        ["cm"] = value => UnitsNet.Length.FromCentimeters(value).Meters,
        ["m|metre|metres|meter|meters"] = value => value,
        ["in|inch|inches|\"|″|”"] = value => UnitsNet.Length.FromInches(value).Meters,
        ["ft|foot|feet|'|′|’"] = value => UnitsNet.Length.FromFeet(value).Meters,
    });

    /// <summary>Mass, kept in kilogram.</summary>
    public static QuantityUnits Mass { get; } = new("a mass", true, "g, kg, oz or lb", new Dictionary<string, Func<double, double>>
    {
        ["g|gram|grams"] = value => UnitsNet.Mass.FromGrams(value).Kilograms,
        ["kg|kilogram|kilograms"] = value => value,
        ["oz|ounce|ounces"] = value => UnitsNet.Mass.FromOunces(value).Kilograms,
        ["lb|lbs|pound|pounds"] = value => UnitsNet.Mass.FromPounds(value).Kilograms,
    });

    /// <summary>Time, kept in day.</summary>
    public static QuantityUnits Duration { get; } = new("a length of time", true, "minutes, hours, days, weeks or years (of 365 days)", new Dictionary<string, Func<double, double>>
    {
        ["min|minute|minutes"] = value => UnitsNet.Duration.FromMinutes(value).Days,
        ["h|hr|hrs|hour|hours"] = value => UnitsNet.Duration.FromHours(value).Days,
        ["d|day|days"] = value => value,
        ["week|weeks"] = value => UnitsNet.Duration.FromWeeks(value).Days,
        ["year|years"] = value => UnitsNet.Duration.FromYears365(value).Days,
    });

    /// <summary>Temperature, kept in degrees Celsius.</summary>
    public static QuantityUnits Temperature { get; } = new("a temperature", false, "°C, °F or K", new Dictionary<string, Func<double, double>>
    {
        ["°c|c|deg c|degc|℃"] = value => value,
        ["°f|f|deg f|degf|℉"] = value => UnitsNet.Temperature.FromDegreesFahrenheit(value).DegreesCelsius,
        ["k"] = value => UnitsNet.Temperature.FromKelvins(value).DegreesCelsius,
    });

    /// <summary>Temperature difference, kept in kelvin.</summary>
    public static QuantityUnits TemperatureDifference { get; } = new("a temperature difference", false, "K, °C or °F", new Dictionary<string, Func<double, double>>
    {
        ["k|°c|c|deg c|degc|℃"] = value => value,
        ["°f|f|deg f|degf|℉"] = value => value / 1.8,
    });

    /// <summary>A share, kept as a fraction of one.</summary>
    public static QuantityUnits Share { get; } = new("a share", false, "%", new Dictionary<string, Func<double, double>>
    {
        ["%|percent"] = value => value / 100,
    });

    /// <summary>Relative humidity, kept as a fraction of one.</summary>
    public static QuantityUnits Humidity { get; } = new("a relative humidity", false, "%", new Dictionary<string, Func<double, double>>
    {
        ["%|percent|% rh|% relative humidity"] = value => value / 100,
    });

    /// <summary>Moisture content with its basis, kept as water over oven-dry wood.</summary>
    public static QuantityUnits Moisture { get; } = new("a moisture content", false, "% dry basis or % wet basis", new Dictionary<string, Func<double, double>>
    {
        ["% dry basis|% dry|% d.b.|% db|percent dry basis"] = value => value / 100,
        ["% wet basis|% wet|% w.b.|% wb|percent wet basis"] = value => value < 100 ? value / (100 - value) : double.PositiveInfinity,
    });

    /// <summary>Air speed, kept in metre per second.</summary>
    public static QuantityUnits Speed { get; } = new("a speed", false, "m/s, km/h, mph or ft/min", new Dictionary<string, Func<double, double>>
    {
        ["m/s"] = value => value,
        ["km/h|kph"] = value => UnitsNet.Speed.FromKilometersPerHour(value).MetersPerSecond,
        ["mph"] = value => UnitsNet.Speed.FromMilesPerHour(value).MetersPerSecond,
        ["ft/min|fpm"] = value => UnitsNet.Speed.FromFeetPerMinute(value).MetersPerSecond,
    });

    /// <summary>Angle, kept in degrees.</summary>
    public static QuantityUnits Angle { get; } = new("an angle", false, "° (or deg)", new Dictionary<string, Func<double, double>>
    {
        ["°|deg|degree|degrees"] = value => value,
        ["rad"] = value => UnitsNet.Angle.FromRadians(value).Degrees,
    });

    /// <summary>Density, kept in kilogram per cubic metre.</summary>
    public static QuantityUnits Density { get; } = new("a density", false, "kg/m3, g/cm3 or lb/ft3", new Dictionary<string, Func<double, double>>
    {
        ["kg/m3|kg/m³"] = value => value,
        ["g/cm3|g/cm³|g/cc"] = value => UnitsNet.Density.FromGramsPerCubicCentimeter(value).KilogramsPerCubicMeter,
        ["lb/ft3|lb/ft³"] = value => UnitsNet.Density.FromPoundsPerCubicFoot(value).KilogramsPerCubicMeter,
    });

    /// <summary>Air pressure, kept in pascal.</summary>
    public static QuantityUnits Pressure { get; } = new("a pressure", false, "Pa, hPa, kPa, mbar, mmHg, inHg or psi", new Dictionary<string, Func<double, double>>
    {
        ["pa"] = value => value,
        ["hpa"] = value => UnitsNet.Pressure.FromHectopascals(value).Pascals,
        ["kpa"] = value => UnitsNet.Pressure.FromKilopascals(value).Pascals,
        ["mbar|mb"] = value => UnitsNet.Pressure.FromMillibars(value).Pascals,
        ["mmhg|torr"] = value => UnitsNet.Pressure.FromMillimetersOfMercury(value).Pascals,
        ["inhg"] = value => UnitsNet.Pressure.FromInchesOfMercury(value).Pascals,
        ["psi"] = value => UnitsNet.Pressure.FromPoundsForcePerSquareInch(value).Pascals,
    });

    private readonly Dictionary<string, Func<double, double>> _bySpelling = spellings
        .SelectMany(unit => unit.Key.Split('|').Select(spelling => (spelling, unit.Value)))
        .ToDictionary(unit => unit.spelling, unit => unit.Value);

    /// <summary>What a unit means, or null when it is none of these.</summary>
    internal Func<double, double>? Find(string unit) =>
        _bySpelling.GetValueOrDefault(string.Join(' ', unit.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant());
}
