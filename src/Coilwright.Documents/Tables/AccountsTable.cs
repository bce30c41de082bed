using System.Globalization;
using Coilwright.Core.Made;
using Coilwright.Wording;

namespace Coilwright.Documents.Tables;

/// <summary>What came in, as a table for the accounts. Amounts are never below nought: what was paid back has a column of its own. The column for tax is there and blank.</summary>
public static class AccountsTable
{
    // The names of the columns are promised: other programs read them.
    private static readonly string[] Columns = ["date", "number", "what", "kind", "count", "where", "received", "paidBack", "fees", "currency", "tax"];

    /// <summary>Comma-separated values, a line for each time that money came or went: <see cref="TableFile.Csv"/>.</summary>
    /// <param name="accounts">The accounts.</param>
    /// <param name="withNames">Whether to whom is in it, as a last column <c>who</c>.</param>
    public static byte[] Csv(Accounts accounts, bool withNames) =>
        TableFile.Csv(withNames ? [.. Columns, "who"] : Columns, accounts.Lines.Select(l => Cells(l, Word(l.Kind), withNames)));

    /// <summary>A workbook of one sheet: the same, its heads in words, with a line for the sum of each currency at the end.</summary>
    /// <param name="accounts">The accounts.</param>
    /// <param name="withNames">Whether to whom is in it.</param>
    /// <param name="language">The language of the heads.</param>
    public static byte[] Xlsx(Accounts accounts, bool withNames, Language language)
    {
        var words = language.Bench.Made;
        string[] heads = [words.ColDay, words.ColNumber, words.ColWhat, words.ColKind, words.ColCount, words.ColWhere, words.ColReceived, words.ColPaidBack, words.ColFees, words.Currency, words.ColTax];
        var sums = accounts.Sums.Select(s => (object?[])
            [null, null, null, words.Sum, null, null, Sum(s, l => Math.Max(l.Received, 0)), Sum(s, l => Math.Max(-l.Received, 0)), s.Fees, s.Currency, null, .. withNames ? (object?[])[null] : []]);
        return TableFile.Xlsx(withNames ? [.. heads, words.ColWho] : heads, accounts.Lines.Select(l => Cells(l, words.Kinds[l.Kind], withNames)).Concat(sums), words.Accounts);

        decimal Sum(AccountSum of, Func<AccountLine, decimal> part) => accounts.Lines.Where(l => l.Currency == of.Currency).Sum(part);
    }

    private static object?[] Cells(AccountLine line, string kind, bool withNames) =>
    [
        line.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), (int)line.Number, line.What, kind, line.Count, line.Where,
        Math.Max(line.Received, 0), Math.Max(-line.Received, 0), line.Fees, line.Currency, null, .. withNames ? (object?[])[line.Who] : [],
    ];

    private static string Word(AccountKind kind) => kind switch { AccountKind.Refund => "refund", AccountKind.Mending => "mending", _ => "sale" };
}
