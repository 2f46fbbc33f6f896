using CsCheck;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Intake;

public sealed class BadRowPropertyTests
{
    private static readonly string[] Good =
    [
        "2026-03-16,,promise,,60,% dry basis,,,", "2026-04-24,,pin,core,over,%,,12 °C,", "2026-04-24,7,mass,,2.31,kg,,,", "2026-07-13,7,mass,,2.06,kg,,,",
        "2026-06-18,,pin,face,19,%,,22 °C,", "2026-07-13,,oven,section,24,% dry basis,,,", "2026-07-13,,sign,checks,yes,,,,",
    ];

    private static readonly string[] Bad =
    [
        "2026-02-30,,pin,core,24,%,,,", "2020-01-01,7,mass,,2.3,kg,,,", "2026-05-03,7,mass,,23,stone,,,", "2026-05-03,,pni,core,24,%,,,", "2026-05-03,7,mass,,300,kg,,,",
        "2026-05-03,,oven,section,24,%,,,", "2026-05-03,,oven,section,240,% dry basis,,,", "2026-05-03,,pin,\"core,24,%,,,", "2026-05-03,,pin,core,24,%,,,,extra", "nonsense",
        "2026-05-03,,promise,,45,%,,,", "2026-05-03T10:30Z,,pin,core,24,%,,,", "2026-08-01,7,mass,,3.4,kg,,,",
    ];

    [Fact]
    public void Bad_rows_never_change_what_is_kept_of_the_others()
    {
        var wanted = Kept(Good);
        var gen = Gen.Select(Gen.Int[0, Good.Length], Gen.Int[0, Bad.Length - 1]).List[1, 5];
        foreach (var inserted in gen.Cases(200)) Assert.Equal(wanted, Kept(Mixed(inserted)));
    }

    private static List<string> Mixed(List<(int Place, int Bad)> inserted)
    {
        List<string> rows = [.. Good];
        foreach (var (place, bad) in inserted.DistinctBy(one => one.Bad)) rows.Insert(place, Bad[bad]);
        return rows;
    }

    private static IEnumerable<string> Kept(IEnumerable<string> rows) => [.. OakIntake.Log(rows).Kept.Select(kept => kept.From.Words).Order()];
}
