using System.Collections.Immutable;

namespace Coilwright.Core.Made;

/// <summary>One record at a show.</summary>
/// <param name="Record">The record.</param>
/// <param name="Taken">How many were taken there.</param>
/// <param name="Sold">How many of them were sold there, those that came back later too.</param>
/// <param name="Back">How many came home.</param>
/// <param name="Gone">How many were lost or given away there.</param>
public sealed record ShowLine(MadeRecord Record, int Taken, int Sold, int Back, int Gone)
{
    /// <summary>How many are still there.</summary>
    public int Still => Taken - Sold - Back - Gone;
}

/// <summary>A show: what was taken, what sold, what came home. Reckoned from the steps of what was there.</summary>
/// <param name="Name">The show.</param>
/// <param name="Lines">A line for each record, by number.</param>
/// <param name="Takings">What was taken there, by currency.</param>
public sealed record ShowTally(string Name, ImmutableArray<ShowLine> Lines, ImmutableArray<AccountSum> Takings)
{
    /// <summary>How many are still there, of all.</summary>
    public int Still => Lines.Sum(l => l.Still);

    /// <summary>The shows that anything was taken to, the last first.</summary>
    public static ImmutableArray<string> Names(IEnumerable<MadeRecord> records) =>
    [
        .. records.SelectMany(r => r.Standing).Where(e => e.Step is MadeStep.Pack).GroupBy(e => ((MadeStep.Pack)e.Step).Show, StringComparer.Ordinal)
            .OrderByDescending(g => g.Max(e => e.Step.On)).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key),
    ];

    /// <summary>The tally of one show.</summary>
    public static ShowTally Of(IEnumerable<MadeRecord> records, string show)
    {
        ImmutableArray<MadeRecord> all = [.. records.OrderBy(r => r.Number)];
        ImmutableArray<ShowLine> lines = [.. all.Select(r => LineOf(r, show)).Where(l => l.Taken > 0)];
        return new ShowTally(show, lines, new Accounts([.. Accounts.Of(all).Lines.Where(l => l.Kind == AccountKind.Sale && l.Where == show)]).Sums);
    }

    private static ShowLine LineOf(MadeRecord record, string show)
    {
        ImmutableArray<MadeStep> steps = [.. record.Standing.Select(e => e.Step)];
        return new ShowLine(record,
            steps.OfType<MadeStep.Pack>().Where(s => s.Show == show).Sum(s => s.Count),
            steps.OfType<MadeStep.Sell>().Where(s => s.Show == show).Sum(s => s.Count),
            steps.OfType<MadeStep.Unpack>().Where(s => s.Show == show).Sum(s => s.Count),
            steps.OfType<MadeStep.Lose>().Where(s => s.Show == show).Sum(s => s.Count) + steps.OfType<MadeStep.Give>().Where(s => s.Show == show).Sum(s => s.Count));
    }
}
