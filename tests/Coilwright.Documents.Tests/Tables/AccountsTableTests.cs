using System.Globalization;
using System.Text;
using Coilwright.Core.Made;
using Coilwright.Documents.Tables;
using Coilwright.Wording;
using CsvHelper;
using MiniExcelLibs;

namespace Coilwright.Documents.Tests.Tables;

/// <summary>What came in, as files for the accounts, read back by other code.</summary>
public class AccountsTableTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);

    private static MadeRecord Record()
    {
        var make = new MadeStep.Make(Guid.CreateVersion7(), Monday, "=Tidewrack, \"blue\"", 3) { Who = "Ann" };
        var sell = new MadeStep.Sell(Guid.CreateVersion7(), make.Id, Monday.AddDays(1), 2, new Paid(80.5m, "EUR")) { Fees = 4.25m, Where = "Harbour market", Who = "Bea" };
        var mistaken = new MadeStep.Sell(Guid.CreateVersion7(), make.Id, Monday.AddDays(1), 1, new Paid(900, "EUR"));
        MadeStep[] steps =
        [
            make, sell, mistaken, new MadeStep.TakeBack(Guid.CreateVersion7(), make.Id, Monday, mistaken.Id),
            new MadeStep.ComeBack(Guid.CreateVersion7(), make.Id, Monday.AddDays(5), sell.Id, 1) { Refund = new Paid(40.25m, "EUR") },
            new MadeStep.Mend(Guid.CreateVersion7(), make.Id, Monday.AddDays(9), "new end") { Fee = new Paid(6, "USD"), Who = "Bea" },
        ];
        return new MadeRecord(7, [.. steps.Select((s, i) => new MadeEntry(i + 1, DateTimeOffset.UnixEpoch, s))]);
    }

    private static List<IDictionary<string, object>> Csv(Accounts accounts, bool withNames)
    {
        using var csv = new CsvReader(new StringReader(Encoding.UTF8.GetString(AccountsTable.Csv(accounts, withNames))), CultureInfo.InvariantCulture);
        return [.. csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>()];
    }

    [Fact]
    public void Csv_has_a_line_for_each_time_that_money_came_or_went_and_no_names()
    {
        var rows = Csv(Accounts.Of([Record()]), withNames: false);
        Assert.Equal(["date", "number", "what", "kind", "count", "where", "received", "paidBack", "fees", "currency", "tax"], rows[0].Keys);
        Assert.Equal(["2026-03-03", "7", "'=Tidewrack, \"blue\"", "sale", "2", "Harbour market", "80.5", "0", "4.25", "EUR", ""], rows[0].Values.Cast<string>());
        Assert.Equal(["2026-03-07", "refund", "0", "40.25"], ((string[])["date", "kind", "received", "paidBack"]).Select(c => (string)rows[1][c]));
        Assert.Equal(("mending", "6", "USD"), (rows[2]["kind"], rows[2]["received"], rows[2]["currency"]));
        Assert.Equal(3, rows.Count);
        Assert.DoesNotContain("Bea", Encoding.UTF8.GetString(AccountsTable.Csv(Accounts.Of([Record()]), withNames: false)), StringComparison.Ordinal);
        Assert.Equal("Bea", Csv(Accounts.Of([Record()]), withNames: true)[0]["who"]);
    }

    [Fact]
    public void Only_what_lies_between_the_days_is_in_it_both_of_them_too()
    {
        Assert.Equal(["sale", "refund"], Csv(Accounts.Of([Record()], Monday.AddDays(1), Monday.AddDays(5)), false).Select(r => (string)r["kind"]));
        Assert.Equal(["refund"], Csv(Accounts.Of([Record()], Monday.AddDays(2), Monday.AddDays(8)), false).Select(r => (string)r["kind"]));
    }

    [Theory]
    [InlineData("en", "Paid back", "sum")]
    [InlineData("de", "Zurückgezahlt", "Summe")]
    public void A_workbook_ends_with_a_sum_for_each_currency(string code, string paidBack, string sum)
    {
        var language = Languages.Find(code)!;
        using var bytes = new MemoryStream(AccountsTable.Xlsx(Accounts.Of([Record()]), withNames: false, language));
        var rows = bytes.Query(useHeaderRow: true).Cast<IDictionary<string, object>>().ToList();
        Assert.Equal(5, rows.Count);
        var words = language.Bench.Made;
        Assert.Equal([(sum, 80.5, 40.25, 4.25, "EUR"), (sum, 6.0, 0.0, 0.0, "USD")],
            rows[3..].Select(r => ((string)r[words.ColKind], Convert.ToDouble(r[words.ColReceived], CultureInfo.InvariantCulture), Convert.ToDouble(r[paidBack], CultureInfo.InvariantCulture),
                Convert.ToDouble(r[words.ColFees], CultureInfo.InvariantCulture), (string)r[words.Currency])));
        Assert.DoesNotContain(rows.SelectMany(r => r.Values), v => v is "Ann" or "Bea");
    }
}
