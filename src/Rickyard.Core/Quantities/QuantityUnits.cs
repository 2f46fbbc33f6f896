namespace Rickyard.Core.Quantities;

/// <summary>One kind of quantity as people write it: the spellings of its units, each with what it means in the unit kept inside.</summary>
/// <param name="name">With its article: "a length".</param>
/// <param name="adds">Whether several parts add up, as in "1 ft 4 in".</param>
/// <param name="allowed">The units as a message lists them.</param>
/// <param name="spellings">By spelling in lower case: from that unit to the unit kept inside.</param>
public sealed class QuantityUnits(string name, bool adds, string allowed, IReadOnlyDictionary<string, Func<double, double>> spellings)
{
    private const double SecondsPerDay = 86_400;

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

    /// <summary>A difference of temperatures, kept in kelvin.</summary>
    public static QuantityUnits TemperatureDelta { get; } = new("a temperature difference", false, "K, °C or °F", new Dictionary<string, Func<double, double>>
    {
        ["k|°c|c|deg c|degc|℃"] = value => value,
        ["°f|f|deg f|degf|℉"] = value => UnitsNet.TemperatureDelta.FromDegreesFahrenheit(value).Kelvins,
    });

    /// <summary>Power, kept in watt.</summary>
    public static QuantityUnits Power { get; } = new("a power", false, "W, kW or BTU/h", new Dictionary<string, Func<double, double>>
    {
        ["w|watt|watts"] = value => value,
        ["kw"] = value => (double)UnitsNet.Power.FromKilowatts(value).Watts,
        ["btu/h|btu/hr|btuh"] = value => (double)UnitsNet.Power.FromBritishThermalUnitsPerHour(value).Watts,
    });

    /// <summary>A stream of air, kept in cubic metre per second.</summary>
    public static QuantityUnits AirFlow { get; } = new("an air flow", false, "m3/h, m3/s, L/s or cfm", new Dictionary<string, Func<double, double>>
    {
        ["m3/h|m³/h"] = value => UnitsNet.VolumeFlow.FromCubicMetersPerHour(value).CubicMetersPerSecond,
        ["m3/s|m³/s"] = value => value,
        ["l/s"] = value => UnitsNet.VolumeFlow.FromLitersPerSecond(value).CubicMetersPerSecond,
        ["cfm|ft3/min|ft³/min"] = value => UnitsNet.VolumeFlow.FromCubicFeetPerMinute(value).CubicMetersPerSecond,
    });

    /// <summary>Area, kept in square metre.</summary>
    public static QuantityUnits Area { get; } = new("an area", false, "cm2, m2, in2 or ft2", new Dictionary<string, Func<double, double>>
    {
        ["cm2|cm²"] = value => UnitsNet.Area.FromSquareCentimeters(value).SquareMeters,
        ["m2|m²"] = value => value,
        ["in2|in²|sq in"] = value => UnitsNet.Area.FromSquareInches(value).SquareMeters,
        ["ft2|ft²|sq ft"] = value => UnitsNet.Area.FromSquareFeet(value).SquareMeters,
    });

    /// <summary>Heat passing a wall for its area and difference of temperatures, kept in watt per square metre and kelvin; the R-value as sold is its inverse.</summary>
    public static QuantityUnits Conductance { get; } = new("a conductance", false, "W/m2K or BTU/h ft2 °F; or as an R-value: m2K/W or h ft2 °F/BTU", new Dictionary<string, Func<double, double>>
    {
        ["w/m2k|w/m²k|w/(m2 k)|w/(m² k)|w/m2 k|w/m² k"] = value => value,
        ["btu/h ft2 °f|btu/h ft2 f|btu/(h ft2 °f)|btu/(h ft2 f)"] = FromImperial,
        ["m2k/w|m²k/w|m2 k/w|m² k/w"] = value => 1 / value,
        ["h ft2 °f/btu|h ft2 f/btu|ft2 h °f/btu|ft2 h f/btu"] = value => FromImperial(1 / value),
    });

    /// <summary>Heat stored for an area and a difference of temperatures, kept in joule per square metre and kelvin.</summary>
    public static QuantityUnits AreaHeatCapacity { get; } = new("a heat capacity", false, "kJ/m2K or BTU/ft2 °F", new Dictionary<string, Func<double, double>>
    {
        ["kj/m2k|kj/m²k|kj/m2 k|kj/m² k"] = value => 1000 * value,
        ["btu/ft2 °f|btu/ft2 f"] = value => 3600 * FromImperial(value),
    });

    /// <summary>Water for its time, kept in kilogram per second.</summary>
    public static QuantityUnits WaterRate { get; } = new("an amount of water a day", false, "L/day, kg/day or pints/day (US)", new Dictionary<string, Func<double, double>>
    {
        ["l/day|l/d|kg/day|kg/d"] = value => value / SecondsPerDay,
        ["pints/day|pint/day|pt/day"] = value => UnitsNet.Volume.FromUsPints(value).Liters / SecondsPerDay,
    });

    /// <summary>Water for its energy, kept in kilogram per kilowatt hour.</summary>
    public static QuantityUnits WaterPerEnergy { get; } = new("an amount of water for energy", false, "L/kWh, kg/kWh or pints/kWh (US)", new Dictionary<string, Func<double, double>>
    {
        ["l/kwh|kg/kwh"] = value => value,
        ["pints/kwh|pint/kwh|pt/kwh"] = value => UnitsNet.Volume.FromUsPints(value).Liters,
    });

    private readonly Dictionary<string, Func<double, double>> _bySpelling = spellings
        .SelectMany(unit => unit.Key.Split('|').Select(spelling => (spelling, unit.Value)))
        .ToDictionary(unit => unit.spelling, unit => unit.Value);

    /// <summary>What a unit means, or null when it is none of these.</summary>
    internal Func<double, double>? Find(string unit) =>
        _bySpelling.GetValueOrDefault(string.Join(' ', unit.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant());

    // BTU for hour, square foot and °F.
    private static double FromImperial(double value) => UnitsNet.HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(value).WattsPerSquareMeterKelvin;
}
