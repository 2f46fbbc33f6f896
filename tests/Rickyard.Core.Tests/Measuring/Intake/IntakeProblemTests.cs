using NodaTime;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Core.Quantities;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Intake;

public sealed class IntakeProblemTests
{
    private const string Good = "2026-06-18,,pin,end grain,15,%,,,";

    [Theory]
    [InlineData(",,pin,core,24,%,,,", "date", "missing")]
    [InlineData("2026-02-30,,pin,core,24,%,,,", "date", "not a day")]
    [InlineData("3/5/2026,,pin,core,24,%,,,", "date", "day or the month first")]
    [InlineData("2026-05-03T10:30Z,,pin,core,24,%,,,", "date", "offset")]
    [InlineData("2026-05-03T10:30+02:00,,pin,core,24,%,,,", "date", "offset")]
    [InlineData("2026-03-14,,pin,core,24,%,,,", "date", "before the lot")]
    [InlineData("2027-06-01,,pin,core,24,%,,,", "date", "after the run")]
    [InlineData("2026-05-03,,,core,24,%,,,", "kind", "missing")]
    [InlineData("2026-05-03,,pni,core,24,%,,,", "kind", "no kind")]
    [InlineData("2026-05-03,,pin,,24,%,,,", "place", "missing")]
    [InlineData("2026-05-03,,pin,spilt face,24,%,,,", "place", "no place")]
    [InlineData("2026-05-03,,pin,depth 2 m,24,%,,,", "place", "above")]
    [InlineData("2026-05-03,,pin,core,,%,,,", "value", "missing")]
    [InlineData("2026-05-03,,pin,core,damp,%,,,", "value", "damp")]
    [InlineData("2026-05-03,,pin,core,24,kg,,,", "unit", "no unit of moisture")]
    [InlineData("2026-05-03,,pin,core,24,%,granite,,", "scale", "granite")]
    [InlineData("2026-05-03,,pin,core,24,%,,12,", "temperature", "no unit")]
    [InlineData("2026-05-03,,pin,core,24,%,,500 °C,", "temperature", "above")]
    [InlineData("2026-05-03,,mass,,2.3,kg,,,", "piece", "missing")]
    [InlineData("2026-05-03,7,mass,,2.3,,,,", "value", "no unit")]
    [InlineData("2026-05-03,7,mass,,2.3,stone,,,", "value", "stone")]
    [InlineData("2026-05-03,7,mass,,2.3 kg,lb,,,", "unit", "another")]
    [InlineData("2026-05-03,7,mass,,-2.3,kg,,,", "value", "below")]
    [InlineData("2026-05-03,7,mass,,300,kg,,,", "value", "more than the largest split")]
    [InlineData("2026-05-03,7,mass,,2.3,g,,,", "value", "below")]
    [InlineData("2026-05-03,,oven,section,24,%,,,", "unit", "basis")]
    [InlineData("2026-05-03,,oven,,24,% dry basis,,,", "place", "missing")]
    [InlineData("2026-05-03,,oven,crust,24,% dry basis,,,", "place", "no part")]
    [InlineData("2026-05-03,,oven,section,240,% dry basis,,,", "value", "more water than the pores")]
    [InlineData("2026-05-03,,oven,section,100,% wet basis,,,", "value", "more water than the pores")]
    [InlineData("2026-05-03,,oven,section,-2,% dry basis,,,", "value", "below 0")]
    [InlineData("2026-05-03,,oven,section,NaN,% dry basis,,,", "value", "not a number")]
    [InlineData("2026-05-03,,promise,,45,%,,,", "unit", "basis")]
    [InlineData("2026-05-03,,sign,chekcs,yes,,,,", "place", "no sign")]
    [InlineData("2026-05-03,,sign,checks,perhaps,,,,", "value", "neither yes nor no")]
    public void Bad_row_beside_a_good_one_is_left_out_with_its_reason(string bad, string column, string reason)
    {
        var log = OakIntake.Log(Good, bad);
        Assert.Single(log.Kept);
        var row = Assert.Single(log.LeftOut);
        Assert.Equal(("oak.csv", 3), (row.Place, row.Line));
        var problem = Assert.Single(row.Problems, problem => problem.Field == $"oak.csv, line 3, {column}");
        Assert.Contains(reason, problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.NotEmpty(problem.WhatToDo);
    }

    [Theory]
    [InlineData("2026-05-03,7,weihging,,2.3,kg,,,", "\"weighing\"")]
    [InlineData("2026-05-03,,oven,sectoin,24,% dry basis,,,", "\"section\"")]
    [InlineData("2026-05-03,,sign,chekcs,yes,,,,", "\"checks\"")]
    public void Misspelt_word_is_answered_with_the_nearest(string bad, string near) =>
        Assert.Contains($"Did you mean {near}", Assert.Single(OakIntake.Log(bad).LeftOut).WhatToDo, StringComparison.Ordinal);

    [Fact]
    public void Everything_wrong_with_a_row_is_told_at_once()
    {
        var row = Assert.Single(OakIntake.Log("2020-01-01,,pin,nowhere,24,%,granite,12,").LeftOut);
        Assert.Equal(["date", "place", "scale", "temperature"], row.Problems.Select(problem => problem.Field.Split(", ")[^1]).Order());
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("\uFEFF\r\n# nothing yet\r\n", "empty")]
    [InlineData(OakIntake.Header, "no readings")]
    [InlineData("2026-06-18,,pin,end grain,15,%,,,", "no header")]
    [InlineData("date,kind,place\n2026-06-18,pin,core", "does not name \"value\"")]
    [InlineData("date,date,kind,value\n2026-06-18,2026-06-18,pin,15", "twice")]
    public void Table_that_cannot_be_read_is_a_failure_that_says_what_to_do(string text, string reason)
    {
        var problem = Assert.Single(OakIntake.Read(text).Problems);
        Assert.Equal("oak.csv", problem.Field);
        Assert.Contains(reason, problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.NotEmpty(problem.WhatToDo);
    }

    [Fact]
    public void More_rows_than_allowed_are_refused()
    {
        Assert.Empty(OakIntake.Read($"{OakIntake.Header}\n{string.Join('\n', Enumerable.Repeat(Good, 10_000))}").Problems);
        Assert.Contains("10001", Assert.Single(OakIntake.Read($"{OakIntake.Header}\n{string.Join('\n', Enumerable.Repeat(Good, 10_001))}").Problems).WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_without_a_day_says_what_to_add()
    {
        var undated = OakIntake.Case with { Start = OakIntake.Case.Start with { IsDated = false } };
        Assert.Equal("start.at", Assert.Single(OakIntake.Of(undated).Read("oak.csv", $"{OakIntake.Header}\n{Good}").Problems).Field);
    }

    [Fact]
    public void Reading_of_tomorrow_is_left_out()
    {
        var log = OakIntake.Of(OakIntake.Case, new LocalDate(2026, 6, 17)).Read("oak.csv", $"{OakIntake.Header}\n{Good}").Value!;
        Assert.Contains("future", Assert.Single(log.LeftOut).Why, StringComparison.Ordinal);
    }
}
