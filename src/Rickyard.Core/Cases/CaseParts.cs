using Rickyard.Core.Splits;

namespace Rickyard.Core.Cases;

/// <summary>Wood, start, piece and lot of a case or of one class of a charge; null where a problem kept a part from being understood.</summary>
internal sealed record CaseParts(WoodSection Wood, CaseStart? Start, Split? Split, LotSection Lot)
{
    /// <summary>The case they make with air and run, or null where one of them is missing.</summary>
    public DryingCase? With(string name, IReadOnlyList<Period> periods, RunSection run) => Wood.Species is null || Start is null || Split is null || run.Days is null ? null : new()
    {
        Name = name,
        Species = Wood.Species,
        BasicDensity = Wood.BasicDensity!.Value,
        RateFactor = Wood.RateFactor,
        Split = Split,
        Pieces = Lot.Pieces,
        SizeSpread = Lot.SizeSpread,
        Start = Start,
        Periods = periods,
        Days = run.Days.Value,
        ReportEvery = run.ReportEvery,
    };
}
