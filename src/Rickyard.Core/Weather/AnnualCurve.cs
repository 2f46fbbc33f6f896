namespace Rickyard.Core.Weather;

/// <summary>
/// A value for each day of the year from twelve monthly means: straight lines between mid-months, with the mid-month values moved until
/// the means of the months come out as given (physics.md, eq. M1; iterated interpolation after Harzallah 1995, from memory).
/// </summary>
internal sealed class AnnualCurve
{
    private const int Rounds = 25;
    private readonly double[] _days = new double[TypicalCalendar.Days];

    /// <param name="monthlyMeans">January to December.</param>
    public AnnualCurve(IReadOnlyList<double> monthlyMeans)
    {
        double[] middles = [.. monthlyMeans];
        for (var round = 0; round < Rounds; round++)
        {
            Interpolate(middles);
            for (var month = 0; month < 12; month++) middles[month] += monthlyMeans[month] - Mean(month);
        }

        Interpolate(middles);
    }

    /// <summary>Value of a day of the typical year, 0 to 364.</summary>
    public double this[int day] => _days[day];

    private void Interpolate(double[] middles)
    {
        for (var month = 0; month < 12; month++)
        {
            var next = (month + 1) % 12;
            double from = Middle(month), length = (TypicalCalendar.DaysIn(month) + TypicalCalendar.DaysIn(next)) / 2.0;
            for (var day = (int)Math.Ceiling(from - 0.5); day + 0.5 < from + length; day++)
            {
                var share = (day + 0.5 - from) / length;
                _days[day % TypicalCalendar.Days] = (1 - share) * middles[month] + share * middles[next];
            }
        }
    }

    private double Mean(int month) => _days.AsSpan(FirstDay(month), TypicalCalendar.DaysIn(month)).ToArray().Average();

    private static double Middle(int month) => FirstDay(month) + TypicalCalendar.DaysIn(month) / 2.0;

    private static int FirstDay(int month) => Enumerable.Range(0, month).Sum(TypicalCalendar.DaysIn);
}
