using System.Collections.Immutable;

namespace Coilwright.Core.Made;

/// <summary>What money came in or went back by.</summary>
public enum AccountKind
{
    /// <summary>A sale.</summary>
    Sale,

    /// <summary>Money paid back for what came back.</summary>
    Refund,

    /// <summary>A repair or another size.</summary>
    Mending,
}

/// <summary>A line of the accounts. Tax is none of ours: what is owed of it depends on where she is.</summary>
/// <param name="On">The day.</param>
/// <param name="Kind">What for.</param>
/// <param name="Number">The record's number.</param>
/// <param name="What">What it is called.</param>
/// <param name="Count">How many.</param>
/// <param name="Received">What was received, before fees; below nought where it was paid back.</param>
/// <param name="Fees">What of it went to fees.</param>
/// <param name="Currency">The currency of both.</param>
public sealed record AccountLine(DateOnly On, AccountKind Kind, long Number, string What, int Count, decimal Received, decimal Fees, string Currency)
{
    /// <summary>To whom: personal, and left out of what is handed on unless she asks for it.</summary>
    public string? Who { get; init; }

    /// <summary>Where.</summary>
    public string? Where { get; init; }
}

/// <summary>The sum of what is in one currency. There is no sum over two.</summary>
/// <param name="Currency">The currency.</param>
/// <param name="Lines">How many lines.</param>
/// <param name="Received">What was received, less what was paid back.</param>
/// <param name="Fees">Fees.</param>
public sealed record AccountSum(string Currency, int Lines, decimal Received, decimal Fees)
{
    /// <summary>What was left after fees.</summary>
    public decimal Left => Received - Fees;
}

/// <summary>Money received over a span of days, as accounts need it.</summary>
/// <param name="Lines">The lines, the earliest first.</param>
public sealed record Accounts(ImmutableArray<AccountLine> Lines)
{
    /// <summary>A sum for each currency, by currency.</summary>
    public ImmutableArray<AccountSum> Sums { get; } =
        [.. Lines.GroupBy(l => l.Currency, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => new AccountSum(g.Key, g.Count(), g.Sum(l => l.Received), g.Sum(l => l.Fees)))];

    /// <summary>The accounts of records; what was taken back is not in them.</summary>
    /// <param name="records">The records.</param>
    /// <param name="from">The first day; null for the beginning.</param>
    /// <param name="to">The last day; null for no end.</param>
    public static Accounts Of(IEnumerable<MadeRecord> records, DateOnly? from = null, DateOnly? to = null) =>
        new([.. records.SelectMany(LinesOf).Where(l => (from is null || l.On >= from) && (to is null || l.On <= to)).OrderBy(l => l.On).ThenBy(l => l.Number)]);

    private static IEnumerable<AccountLine> LinesOf(MadeRecord record)
    {
        foreach (var step in record.Standing.Select(e => e.Step))
        {
            var line = step switch
            {
                MadeStep.Sell sell => Line(step, AccountKind.Sale, sell.Count, sell.Received.Amount, sell.Received.Currency) with { Fees = sell.Fees, Where = sell.Show ?? sell.Where },
                MadeStep.ComeBack { Refund: { } refund } back => Line(step, AccountKind.Refund, back.Count, -refund.Amount, refund.Currency),
                MadeStep.Mend { Fee: { } fee } => Line(step, AccountKind.Mending, 1, fee.Amount, fee.Currency),
                _ => null,
            };
            if (line is not null) yield return line;
        }

        AccountLine Line(MadeStep step, AccountKind kind, int count, decimal received, string currency) =>
            new(step.On, kind, record.Number, record.Make.Title, count, received, 0, currency) { Who = step.Who };
    }
}
