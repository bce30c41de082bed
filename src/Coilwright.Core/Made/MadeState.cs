using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Made;

/// <summary>Something that went out of the house and may come back.</summary>
/// <param name="On">The day it went.</param>
/// <param name="Left">How many of them are still out.</param>
/// <param name="Received">What was received for them and not paid back; null for what was given away.</param>
public sealed record WentOut(DateOnly On, int Left, Paid? Received);

/// <summary>Where the pieces of a record are, reckoned from its steps alone.</summary>
/// <remarks>All places together are always as many as were made, and none is below nought.</remarks>
public sealed record MadeState
{
    private MadeState() { }

    /// <summary>The day they were made.</summary>
    public required DateOnly MadeOn { get; init; }

    /// <summary>At home.</summary>
    public required int AtHome { get; init; }

    /// <summary>At each show that some were taken to.</summary>
    public ImmutableSortedDictionary<string, int> AtShows { get; init; } = ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);

    /// <summary>What was sold and given away, by the step.</summary>
    public ImmutableDictionary<Guid, WentOut> Out { get; init; } = ImmutableDictionary<Guid, WentOut>.Empty;

    /// <summary>Lost or broken.</summary>
    public int Lost { get; init; }

    /// <summary>Taken apart.</summary>
    public int TakenApart { get; init; }

    /// <summary>What is asked for one; null when nobody said.</summary>
    public Paid? Asked { get; init; }

    /// <summary>The wrist that they suit, mm: as they were made, or as one that was made alone was last re-sized.</summary>
    public double? WristMm { get; init; }

    /// <summary>Sold, and not come back.</summary>
    public int Sold => Out.Values.Where(o => o.Received is not null).Sum(o => o.Left);

    /// <summary>Given away, and not come back.</summary>
    public int Given => Out.Values.Where(o => o.Received is null).Sum(o => o.Left);

    /// <summary>Hers to sell: at home or at a show.</summary>
    public int InHand => AtHome + AtShows.Values.Sum();

    /// <summary>The state after steps, the earliest first, of which the first is how it was made; null when one of them cannot be done after those before it.</summary>
    /// <param name="steps">The steps; none of them takes another back. None at all are what was never made.</param>
    /// <param name="why">Why not.</param>
    public static MadeState? Of(IEnumerable<MadeStep> steps, out Fault? why)
    {
        why = null;
        MadeState? state = null;
        foreach (var step in steps)
        {
            if (state is null && step is not MadeStep.Make)
            {
                if (step is MadeStep.Erase) continue;
                why = Fault.Of(FaultCodes.MadeRestsOn, "", "");
                return null;
            }
            if ((state = step is MadeStep.Make make ? Made(make) : state!.After(step, out why)) is null) return null;
        }
        return state ?? new MadeState { MadeOn = default, AtHome = 0 };
    }

    private static MadeState Made(MadeStep.Make make) => new() { MadeOn = make.On, AtHome = make.Count, WristMm = make.WristMm };

    private MadeState? After(MadeStep step, out Fault? why)
    {
        why = null;
        if (step.On < MadeOn && step is not MadeStep.Erase)
        {
            why = Fault.Of(FaultCodes.MadeBefore, "on", Day(step.On), ("made", Day(MadeOn)));
            return null;
        }
        switch (step)
        {
            case MadeStep.Ask ask:
                return this with { Asked = ask.Price };
            case MadeStep.Sell sell:
                return Less(sell.Show, sell.Count, out why) is { } sold ? sold with { Out = Out.Add(sell.Id, new WentOut(sell.On, sell.Count, sell.Received)) } : null;
            case MadeStep.Give give:
                return Less(give.Show, give.Count, out why) is { } given ? given with { Out = Out.Add(give.Id, new WentOut(give.On, give.Count, null)) } : null;
            case MadeStep.Lose lose:
                return Less(lose.Show, lose.Count, out why) is { } lost ? lost with { Lost = Lost + lose.Count } : null;
            case MadeStep.TakeApart apart:
                return Less(null, apart.Count, out why) is { } rest ? rest with { TakenApart = TakenApart + apart.Count } : null;
            case MadeStep.Pack pack:
                return Less(null, pack.Count, out why) is { } packed ? packed with { AtShows = AtShows.SetItem(pack.Show, AtShows.GetValueOrDefault(pack.Show) + pack.Count) } : null;
            case MadeStep.Unpack unpack:
                return Less(unpack.Show, unpack.Count, out why) is { } home ? home with { AtHome = AtHome + unpack.Count } : null;
            case MadeStep.ComeBack back:
                return Back(back, out why);
            case MadeStep.Mend mend:
                if (InHand + Sold + Given == 0)
                {
                    why = Fault.Of(FaultCodes.MadeNoneLeft, "", "");
                    return null;
                }
                // Of several that were made alike it is not said which was re-sized.
                return mend.WristMm is { } wrist && InHand + Sold + Given + Lost + TakenApart == 1 ? this with { WristMm = wrist } : this;
            default:
                return this;
        }
    }

    private MadeState? Less(string? show, int count, out Fault? why)
    {
        var there = show is null ? AtHome : AtShows.GetValueOrDefault(show);
        why = count <= there ? null : Fault.Of(FaultCodes.MadeTooFew, "count", Text(count), ("there", Text(there)), ("show", show ?? ""));
        if (why is not null) return null;
        return show is null ? this with { AtHome = AtHome - count } : this with { AtShows = count == there ? AtShows.Remove(show) : AtShows.SetItem(show, there - count) };
    }

    private MadeState? Back(MadeStep.ComeBack back, out Fault? why)
    {
        why = null;
        if (!Out.TryGetValue(back.Gone, out var gone)) why = Fault.Of(FaultCodes.MadeNoStep, "gone", "");
        else if (back.On < gone.On) why = Fault.Of(FaultCodes.MadeBefore, "on", Day(back.On), ("made", Day(gone.On)));
        else if (back.Count > gone.Left) why = Fault.Of(FaultCodes.MadeTooManyBack, "count", Text(back.Count), ("out", Text(gone.Left)));
        else if (back.Refund is { } refund)
        {
            if (gone.Received is not { } received) why = Fault.Of(FaultCodes.MadeRefundAbove, "refund", Text(refund.Amount), ("left", "0"), ("currency", refund.Currency));
            else if (refund.Currency != received.Currency) why = Fault.Of(FaultCodes.MadeCurrencyDiffers, "currency", refund.Currency, ("other", received.Currency));
            else if (refund.Amount > received.Amount) why = Fault.Of(FaultCodes.MadeRefundAbove, "refund", Text(refund.Amount), ("left", Text(received.Amount)), ("currency", received.Currency));
        }
        if (why is not null) return null;
        var left = gone! with { Left = gone.Left - back.Count, Received = gone.Received is { } paid ? paid with { Amount = paid.Amount - (back.Refund?.Amount ?? 0) } : null };
        return this with { AtHome = AtHome + back.Count, Out = Out.SetItem(back.Gone, left) };
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Text(decimal number) => number.ToString(CultureInfo.InvariantCulture);
}
