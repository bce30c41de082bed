using Coilwright.Core.Made;

namespace Coilwright.Wording;

/// <summary>What was made, in words: where it is, and what happened to it.</summary>
/// <param name="language">The language.</param>
public sealed class MadeSentences(Language language)
{
    private MadeWords Words => language.Bench.Made;

    /// <summary>A record's number.</summary>
    public string Number(MadeRecord record) => language.Fill(Words.Number, ("number", record.Number));

    /// <summary>An amount.</summary>
    public string Of(Paid paid) => new StockSentences(language).Money(paid.Amount, paid.Currency);

    /// <summary>Where the pieces of a record are, a few words for each place.</summary>
    public IEnumerable<string> Places(MadeRecord record)
    {
        if (record.IsVoid)
        {
            yield return Words.Void;
            yield break;
        }
        var now = record.Now;
        if (now.AtHome > 0) yield return language.Fill(Words.AtHome, ("count", now.AtHome));
        foreach (var (show, count) in now.AtShows) yield return language.Fill(Words.AtShow, ("count", count), ("show", show));
        if (now.Sold > 0) yield return language.Fill(Words.Sold, ("count", now.Sold));
        if (now.Given > 0) yield return language.Fill(Words.Given, ("count", now.Given));
        if (now.Lost > 0) yield return language.Fill(Words.Lost, ("count", now.Lost));
        if (now.TakenApart > 0) yield return language.Fill(Words.Apart, ("count", now.TakenApart));
    }

    /// <summary>The facts that a buyer asks for: wrist and price, where they are known.</summary>
    public IEnumerable<string> Facts(MadeRecord record)
    {
        if (record.Now.WristMm is { } wrist) yield return language.Sentence(Words.ForWrist, ("wristMm", wrist));
        if (record.Now.Asked is { } asked) yield return language.Fill(Words.Asked, ("price", Of(asked)));
    }

    /// <summary>What a step was, without its day, names and notes.</summary>
    public string Of(MadeStep step) => step switch
    {
        MadeStep.Make make => language.Fill(Words.DidMake, ("count", make.Count)),
        MadeStep.Ask ask => language.Fill(Words.DidAsk, ("price", Of(ask.Price))),
        MadeStep.Sell sell => language.Fill(Words.DidSell, ("count", sell.Count), ("price", Of(sell.Received)), ("where", sell.Show ?? sell.Where),
            ("fees", sell.Fees > 0 ? Of(sell.Received with { Amount = sell.Fees }) : null)),
        MadeStep.Give give => language.Fill(Words.DidGive, ("count", give.Count)),
        MadeStep.ComeBack back => language.Fill(Words.DidBack, ("count", back.Count), ("price", back.Refund is { } refund ? Of(refund) : null)),
        MadeStep.Mend { WristMm: { } wrist } mend => language.Sentence(Words.DidResize, ("done", mend.Done), ("wristMm", wrist), ("price", mend.Fee is { } fee ? Of(fee) : null)),
        MadeStep.Mend mend => language.Fill(Words.DidMend, ("done", mend.Done), ("price", mend.Fee is { } fee ? Of(fee) : null)),
        MadeStep.Lose lose => language.Fill(Words.DidLose, ("count", lose.Count)),
        MadeStep.TakeApart apart => language.Fill(Words.DidApart, ("count", apart.Count)),
        MadeStep.Pack pack => language.Fill(Words.DidPack, ("count", pack.Count), ("show", pack.Show)),
        MadeStep.Unpack unpack => language.Fill(Words.DidUnpack, ("count", unpack.Count), ("show", unpack.Show)),
        MadeStep.TakeBack => Words.DidTakeBack,
        MadeStep.Erase => Words.DidErase,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>A sum of the accounts.</summary>
    public string Of(AccountSum sum) => language.Fill(Words.SumOf, ("lines", sum.Lines), ("received", Money(sum, sum.Received)), ("fees", Money(sum, sum.Fees)), ("left", Money(sum, sum.Left)));

    /// <summary>What was taken at a show, in one currency.</summary>
    public string Takings(AccountSum sum) => language.Fill(Words.Takings, ("received", Money(sum, sum.Received)), ("fees", sum.Fees > 0 ? Money(sum, sum.Fees) : null));

    private string Money(AccountSum sum, decimal amount) => new StockSentences(language).Money(amount, sum.Currency);
}
