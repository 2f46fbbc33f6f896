using System.Globalization;
using NodaTime;

namespace Rickyard.Core.Tests.Weather;

/// <summary>Writes small invented EPW files, so that each oddity can be put in by itself.</summary>
internal static class EpwText
{
    public const string Header = """
        LOCATION,Anyplace,IA,USA,TMY3,000000,41.50,-93.60,-6.0,290.0
        DESIGN CONDITIONS,0
        TYPICAL/EXTREME PERIODS,0
        GROUND TEMPERATURES,0
        HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
        COMMENTS 1,"invented, for tests"
        COMMENTS 2
        DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31

        """;

    /// <summary>A year of mild hours with 0.1 mm of rain each; <paramref name="change"/> may alter the fields of an hour, counted from 0.</summary>
    public static string Year(Action<int, string[]>? change = null, int hours = 8760, int year = 0, string header = Header)
    {
        var lines = new List<string>(hours);
        var start = new LocalDateTime(year > 0 ? year : 2001, 1, 1, 0, 0);
        for (var hour = 0; hour < hours; hour++)
        {
            var date = start.PlusHours(hour).Date;
            var fields = Hour(year > 0 ? year : 1990 + date.Month, date.Month, date.Day, hour % 24 + 1);
            change?.Invoke(hour, fields);
            lines.Add(string.Join(',', fields));
        }

        return header + string.Join('\n', lines) + "\n";
    }

    private static string[] Hour(int year, int month, int day, int hour)
    {
        var fields = Enumerable.Repeat("0", 35).ToArray();
        fields[0] = Text(year);
        fields[1] = Text(month);
        fields[2] = Text(day);
        fields[3] = Text(hour);
        fields[5] = "flags";
        fields[6] = hour is > 8 and < 20 ? "14.0" : "10.0";
        fields[7] = "5.0";
        fields[8] = "70";
        fields[9] = "98000";
        fields[13] = "100";
        fields[21] = "3.0";
        fields[33] = "0.1";
        fields[34] = "1.0";
        return fields;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
