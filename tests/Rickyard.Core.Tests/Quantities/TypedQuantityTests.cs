using Rickyard.Core.Quantities;
using Xunit;

namespace Rickyard.Core.Tests.Quantities;

public sealed class TypedQuantityTests
{
    private static readonly Dictionary<string, QuantityUnits> Kinds = new()
    {
        ["length"] = QuantityUnits.Length, ["mass"] = QuantityUnits.Mass, ["time"] = QuantityUnits.Duration, ["temperature"] = QuantityUnits.Temperature,
        ["humidity"] = QuantityUnits.Humidity, ["moisture"] = QuantityUnits.Moisture, ["speed"] = QuantityUnits.Speed, ["angle"] = QuantityUnits.Angle,
        ["density"] = QuantityUnits.Density, ["pressure"] = QuantityUnits.Pressure,
    };

    // Definitions of the units: international inch, pound and mile; 1 torr = 101325/760 Pa.
    [Theory]
    [InlineData("length", "16 in", 0.4064)]
    [InlineData("length", "16in", 0.4064)]
    [InlineData("length", "40 cm", 0.40)]
    [InlineData("length", "1 ft 4 in", 0.4064)]
    [InlineData("length", "1' 4\"", 0.4064)]
    [InlineData("length", "5 1/2 in", 0.1397)]
    [InlineData("length", "1/2 in", 0.0127)]
    [InlineData("length", "-4 in", -0.1016)]
    [InlineData("length", "−4 in", -0.1016)]
    [InlineData("length", "-1 ft 4 in", -0.4064)]
    [InlineData("mass", "4.6 kg", 4.6)]
    [InlineData("mass", "10 lb 3 oz", 4.62097226)]
    [InlineData("time", "37 days", 37)]
    [InlineData("time", "2 weeks", 14)]
    [InlineData("time", "12 h", 0.5)]
    [InlineData("time", "1 day 12 hours", 1.5)]
    [InlineData("temperature", "158 °F", 70)]
    [InlineData("temperature", "70 °C", 70)]
    [InlineData("temperature", "70 C", 70)]
    [InlineData("temperature", "-40 f", -40)]
    [InlineData("temperature", "343.15 K", 70)]
    [InlineData("humidity", "20 %", 0.2)]
    [InlineData("humidity", "20%", 0.2)]
    [InlineData("moisture", "68 % dry basis", 0.68)]
    [InlineData("moisture", "40 %  wet  basis", 0.6666666667)]
    [InlineData("speed", "0.2 m/s", 0.2)]
    [InlineData("speed", "10 mph", 4.4704)]
    [InlineData("angle", "60°", 60)]
    [InlineData("angle", "60 deg", 60)]
    [InlineData("density", "0.6 g/cm3", 600)]
    [InlineData("density", "640 kg/m3", 640)]
    [InlineData("pressure", "840 hPa", 84000)]
    [InlineData("pressure", "760 mmHg", 101325)]
    public void Text_with_its_unit_is_read(string kind, string text, double value)
    {
        Assert.True(Any(kind).TryRead(text, "key", out var read, out var problem), problem?.ToString());
        Assert.Equal(value, read, 1e-6 * Math.Max(1, Math.Abs(value)) + (kind == "pressure" ? 0.1 : 0));
    }

    [Theory]
    [InlineData("length", "16", "has no unit")]
    [InlineData("length", "", "empty")]
    [InlineData("length", "long", "is not a length")]
    [InlineData("length", "16 kg", "has the unit \"kg\"")]
    [InlineData("length", "4,6 cm", "comma")]
    [InlineData("length", "1 ft -4 in", "sign in the middle")]
    [InlineData("length", "1 ft 4", "has no unit")]
    [InlineData("temperature", "70 °C 3 °C", "2 values")]
    [InlineData("moisture", "68 %", "does not say its basis")]
    [InlineData("moisture", "100 % wet basis", "above what is possible")]
    [InlineData("mass", "1e999 kg", "above what is possible")]
    [InlineData("length", "NaN m", "is not a length")]
    public void Text_that_is_wrong_is_told_why(string kind, string text, string why)
    {
        Assert.False(Any(kind).TryRead(text, "key", out _, out var problem));
        Assert.Equal("key", problem.Field);
        Assert.Contains(why, problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("such as", problem.WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_text_with_line_breaks_is_quoted_short_and_on_one_line()
    {
        Any("length").TryRead(new string('x', 500) + "\n\u001b[31m", "key", out _, out var problem);
        Assert.True(problem!.WhatIsWrong.Length < 100);
        Assert.DoesNotContain(problem.WhatIsWrong, char.IsControl);
    }

    private static TypedQuantity Any(string kind) => new(Kinds[kind], -1e6, 1e6, "any size", "1");
}
