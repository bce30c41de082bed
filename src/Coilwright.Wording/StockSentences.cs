using Coilwright.Core.Stock;

namespace Coilwright.Wording;

/// <summary>Stock in words: quantities, amounts, and what happened.</summary>
/// <param name="language">The language.</param>
public sealed class StockSentences(Language language)
{
    private StockPageWords Words => language.Bench.Stock;

    /// <summary>A quantity with its unit: <c>120</c>, <c>8011 mm (315 3/8 in)</c>, <c>15 g</c>.</summary>
    public string Of(Quantity quantity, StockUnit unit) => unit switch
    {
        StockUnit.Millimetre => language.Length((double)quantity.Units),
        StockUnit.Gram => $"{Number(quantity)}\u00a0{language.Terms.Gram}",
        _ => Number(quantity),
    };

    /// <summary>An amount with its currency.</summary>
    public string Money(decimal amount, string currency) => language.Fill(Words.Money, ("amount", language.Amount(amount)), ("currency", currency));

    /// <summary>What happened, without when and what for.</summary>
    public string Of(StockEntry entry, StockUnit unit) => entry.Movement switch
    {
        Movement.Receive { Lot: var lot } => language.Fill(Words.DidReceive, ("quantity", Of(lot.Quantity, unit)), ("supplier", lot.Supplier), ("number", lot.Number),
            ("cost", lot is { Cost: { } cost, Currency: { } currency } ? Money(cost, currency) : null)),
        Movement.Use use => language.Fill(use.Reservation is null ? Words.DidUse : Words.DidUseKept, ("quantity", Of(use.Quantity, unit))),
        Movement.Reserve reserve => language.Fill(Words.DidReserve, ("quantity", Of(reserve.Quantity, unit))),
        Movement.Release => Words.DidRelease,
        Movement.Recount recount => language.Fill(Words.DidRecount, ("quantity", Of(recount.Counted, unit)), ("by", Signed(new Quantity(entry.Changes.Sum(c => c.By.Thousandths)), unit))),
        Movement.Return back => language.Fill(Words.DidReturn, ("quantity", Of(back.Quantity, unit))),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private string Signed(Quantity by, StockUnit unit) => by.Thousandths switch
    {
        > 0 => "+" + Of(by, unit),
        < 0 => "\u2212" + Of(-by, unit),
        _ => "\u00b10",
    };

    private string Number(Quantity quantity) => language.Number((double)quantity.Units, 3);
}
