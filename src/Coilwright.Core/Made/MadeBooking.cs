using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Made;

/// <summary>Decides whether a step can be written down. The one place where nothing is sold twice.</summary>
public static class MadeBooking
{
    /// <summary>Most that are made alike in one record; our choice.</summary>
    public const int MostAlike = 10_000;

    /// <summary>Most lines of stock in one step; our choice.</summary>
    public const int MostUsed = 500;

    /// <summary>Why a step cannot be done; null when it can.</summary>
    /// <param name="record">The record as it is; null when there is none yet.</param>
    /// <param name="step">The step.</param>
    public static Fault? Of(MadeRecord? record, MadeStep step)
    {
        if (RulesOf(step) is { } fault) return fault;
        if (step is MadeStep.Make) return record is null ? null : Fault.Of(FaultCodes.MadeIdTaken, "", "");
        if (record is null || (record.IsVoid && step is not MadeStep.Erase)) return Fault.Of(FaultCodes.MadeNoRecord, "", "");
        if (step is not MadeStep.TakeBack { Step: var mistaken })
        {
            MadeState.Of(record.Standing.Select(e => e.Step).Append(step), out var why);
            return why;
        }
        // What takes back is not taken back itself: it is written down anew. What was erased is gone.
        if (record.Standing.FirstOrDefault(e => e.Step.Id == mistaken) is not { Step: not MadeStep.Erase }) return Fault.Of(FaultCodes.MadeNoStep, "step", "");
        return MadeState.Of(record.Standing.Select(e => e.Step).Where(s => s.Id != mistaken), out _) is null ? Fault.Of(FaultCodes.MadeRestsOn, "", "") : null;
    }

    /// <summary>Whether two steps of one id are the same, whatever was erased of one and filled in by the stock.</summary>
    public static bool AreTheSame(MadeStep a, MadeStep b) => a.Bare.Equals(b.Bare);

    private static Fault? RulesOf(MadeStep step)
    {
        var faults = new List<Fault>();
        Text("who", step.Who);
        Text("note", step.Note);
        switch (step)
        {
            case MadeStep.Make make:
                faults.AddRange(PieceRules.OfText("title", make.Title, mayBeEmpty: false));
                Count(make.Count);
                Wrist(make.WristMm);
                Used(make.Used);
                if (make.Piece is null != make.Revision is null) faults.Add(Fault.Of(FaultCodes.MadeNoPiece, "piece", ""));
                break;
            case MadeStep.Ask ask:
                Money("price", ask.Price);
                break;
            case MadeStep.Sell sell:
                Count(sell.Count);
                Money("received", sell.Received);
                Amount("fees", sell.Fees);
                if (sell.Fees > sell.Received.Amount) faults.Add(Fault.Of(FaultCodes.MadeFeesAbove, "fees", Number(sell.Fees), ("price", Number(sell.Received.Amount))));
                Text("where", sell.Where);
                Text("show", sell.Show);
                break;
            case MadeStep.Give give:
                Count(give.Count);
                break;
            case MadeStep.ComeBack back:
                Count(back.Count);
                if (back.Refund is { } refund) Money("refund", refund);
                break;
            case MadeStep.Mend mend:
                faults.AddRange(PieceRules.OfText("done", mend.Done, mayBeEmpty: false));
                if (mend.Fee is { } fee) Money("fee", fee);
                Wrist(mend.WristMm);
                Used(mend.Used);
                break;
            case MadeStep.Lose lose:
                Count(lose.Count);
                break;
            case MadeStep.TakeApart apart:
                Count(apart.Count);
                Used(apart.Back);
                break;
            case MadeStep.Pack pack:
                Count(pack.Count);
                faults.AddRange(PieceRules.OfText("show", pack.Show, mayBeEmpty: false));
                break;
            case MadeStep.Unpack unpack:
                Count(unpack.Count);
                break;
        }
        return faults.FirstOrDefault();

        void Text(string field, string? text)
        {
            if (text is not null) faults.AddRange(PieceRules.OfText(field, text, mayBeEmpty: true));
        }

        void Count(int count)
        {
            if (count < 1) faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "count", Number(count), ("min", "1"), ("unit", "")));
            else if (count > MostAlike) faults.Add(Fault.Of(FaultCodes.ValueAtMost, "count", Number(count), ("max", Number(MostAlike)), ("unit", "")));
        }

        void Money(string field, Paid paid)
        {
            Amount(field, paid.Amount);
            if (!CurrencyCode.Is(paid.Currency)) faults.Add(Fault.Of(FaultCodes.CurrencyForm, "currency", paid.Currency is { Length: > 10 } ? "" : paid.Currency));
        }

        void Amount(string field, decimal amount)
        {
            if (amount < 0) faults.Add(Fault.Of(FaultCodes.ValueAtLeast, field, Number(amount), ("min", "0"), ("unit", "")));
            else if (amount > BuyingList.MostMoney) faults.Add(Fault.Of(FaultCodes.ValueAtMost, field, Number(amount), ("max", Number(BuyingList.MostMoney)), ("unit", "")));
            else if (amount % BuyingList.Grain != 0) faults.Add(Fault.Of(FaultCodes.BuyingTooFine, field, Number(amount)));
        }

        void Wrist(double? mm)
        {
            if (mm is not { } wrist) return;
            if (!double.IsFinite(wrist)) faults.Add(Fault.Of(FaultCodes.ValueNotFinite, "wristMm", ""));
            else if (wrist < Wearer.LeastWristMm) faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "wristMm", Number((decimal)wrist), ("min", Number((decimal)Wearer.LeastWristMm)), ("unit", "mm")));
            else if (wrist > Wearer.MostWristMm) faults.Add(Fault.Of(FaultCodes.ValueAtMost, "wristMm", wrist.ToString(CultureInfo.InvariantCulture), ("max", Number((decimal)Wearer.MostWristMm)), ("unit", "mm")));
        }

        void Used(ImmutableArray<UsedBeads> used)
        {
            if (used.Length > MostUsed) faults.Add(Fault.Of(FaultCodes.ValueAtMost, "used", Number(used.Length), ("max", Number(MostUsed)), ("unit", "")));
            foreach (var line in used)
                if (line.Quantity.Thousandths <= 0) faults.Add(Fault.Of(FaultCodes.ValueAbove, "quantity", line.Quantity.ToString(), ("min", "0"), ("unit", "")));
        }
    }

    private static string Number(decimal number) => number.ToString(CultureInfo.InvariantCulture);
}
