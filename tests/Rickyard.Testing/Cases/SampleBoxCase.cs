using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;

namespace Rickyard.Testing.Cases;

/// <summary>A case file of a hot box with a charge that is right and says everything, to be changed in one place.</summary>
public static class SampleBoxCase
{
    /// <summary>Its text.</summary>
    public const string Text = """
        {
          "name": "Cabinet",
          "wood": { "species": "northern red oak", "basic density": "560 kg/m3" },
          "split": { "shape": "wedge", "length": "14 in", "radius": "4 in", "angle": "60°", "bark": true },
          "start": { "moisture": "35 % dry basis", "temperature": "10 °C", "at": "2026-03-01" },
          "charge": [
            { "name": "small", "split": { "shape": "wedge", "length": "14 in", "radius": "3 in", "angle": "60°", "bark": true }, "pieces": 40, "size spread": "10 %", "shelf": "warm", "packing": "loose" },
            { "name": "large", "pieces": 20, "size spread": "15 %", "shelf": "cool", "packing": "tight" }
          ],
          "air": {
            "box": {
              "inside": { "width": "65 cm", "depth": "60 cm", "height": "1.4 m" },
              "walls": { "conductance": "1.6 W/m2K", "heat capacity": "8 kJ/m2K" },
              "heater": { "power": "1.5 kW", "thermostat band": "4 K", "radiant share": "20 %", "fuel": "electricity", "efficiency": "100 %" },
              "fan": { "speed": "0.5 m/s", "flow": "360 m3/h", "power": "40 W" },
              "vent": { "opening": "20 cm2", "humidity": "60 %" },
              "leaks": { "opening": "8 cm2" },
              "ambient": { "steady": { "temperature": "15 °C", "humidity": "55 %" } },
              "stages": [
                { "kind": "drying", "for": "5 days", "temperature": "70 °C" },
                { "kind": "closed rest", "for": "3 days", "temperature": "70 °C" }
              ],
              "tariff": { "electricity": "0.15 $/kWh" }
            }
          },
          "run": { "for": "8 days", "report every": "6 h" }
        }
        """;

    /// <summary>Its text after a change inside the box.</summary>
    /// <param name="path">Keys from the box on, with dots; a number is a place in a list.</param>
    /// <param name="json">The new value as JSON, or null to leave the key out.</param>
    public static string WithBox(string path, string? json) => SampleCase.Change(Text, $"air.box.{path}", json);

    /// <summary>The box of a case as read; the case must have no problems.</summary>
    public static BoxPlan Plan(string text) => ((BoxPeriod)SampleCase.Read(text).Periods[0]).Plan;
}
