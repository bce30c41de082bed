using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Made;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;

namespace Coilwright.Storage.Made;

/// <summary>The rows of a book as one transaction sees them, alone with them from its first look to its end.</summary>
internal interface IMadeRows
{
    /// <summary>A record; null when there is none.</summary>
    MadeRecord? Record(Guid made);

    /// <summary>A step that was written down; null when there is none of this id.</summary>
    MadeStep? Done(Guid step);

    /// <summary>The greatest number of a record; 0 when there is none.</summary>
    long LastNumber();

    /// <summary>Whether the shelf has a state of a piece.</summary>
    bool HasState(Guid piece, long revision);

    /// <summary>Writes a step down.</summary>
    /// <param name="step">The step.</param>
    /// <param name="number">The record's number where the step begins one.</param>
    void Add(MadeStep step, long? number);

    /// <summary>Takes the names and notes of a record out.</summary>
    void Erase(Guid made);
}

/// <summary>How every book writes steps down, with the stock beside it. Whoever calls it throws away what was written where the answer is not <see cref="MadeAnswer.Kept"/>.</summary>
internal static class MadeDesk
{
    public static MadeAnswer WriteDown(IMadeRows book, IStockRows stock, ImmutableArray<MadeStep> steps, ReckoningData data)
    {
        for (var i = 0; i < steps.Length; i++)
        {
            var step = steps[i];
            if (book.Done(step.Id) is { } done)
            {
                if (MadeBooking.AreTheSame(done, step)) continue;
                return new MadeAnswer.Refused(i, Fault.Of(FaultCodes.MadeIdTaken, "", ""));
            }
            if (WhyNot(book, step) is { } why) return new MadeAnswer.Refused(i, why);
            if (MovementsOf(book, step) is { Length: > 0 } movements && StockDesk.Book(stock, new StockChange { Movements = movements }, data) is StockAnswer.Refused refused)
                return new MadeAnswer.Refused(i, refused.Why);
            book.Add(Resolved(stock, step), step is MadeStep.Make ? book.LastNumber() + 1 : null);
            if (step is MadeStep.Erase) book.Erase(step.Made);
        }
        return new MadeAnswer.Kept([.. steps.Select(s => s.Made).Distinct().Select(book.Record).OfType<MadeRecord>()]);
    }

    private static Fault? WhyNot(IMadeRows book, MadeStep step)
    {
        if (MadeBooking.Of(book.Record(step.Made), step) is { } why) return why;
        return step is MadeStep.Make { Piece: { } piece, Revision: { } revision } && !book.HasState(piece, revision) ? Fault.Of(FaultCodes.MadeNoPiece, "piece", "") : null;
    }

    private static ImmutableArray<Movement> MovementsOf(IMadeRows book, MadeStep step) => step switch
    {
        MadeStep.Make make => [.. make.Used.Where(u => u.Movement is not null).Select(u => new Movement.Use(u.Movement!.Value, u.Item, u.Quantity) { Lot = u.Lot, For = make.Title })],
        MadeStep.Mend mend => [.. mend.Used.Where(u => u.Movement is not null).Select(u => new Movement.Use(u.Movement!.Value, u.Item, u.Quantity) { Lot = u.Lot, For = mend.Done })],
        MadeStep.TakeApart apart => [.. apart.Back.Where(u => u.Movement is not null).Select(u => Return(u.Movement!.Value, u, book.Record(apart.Made)!))],
        MadeStep.TakeBack back => OppositeOf(book, back),
        _ => [],
    };

    /// <summary>What a step booked, the other way about: nothing came of it.</summary>
    private static ImmutableArray<Movement> OppositeOf(IMadeRows book, MadeStep.TakeBack back)
    {
        var record = book.Record(back.Made)!;
        return book.Done(back.Step) switch
        {
            MadeStep.Make make => [.. make.Used.Where(u => u.Movement is not null).Select(u => Return(Guid.CreateVersion7(), u, record))],
            MadeStep.Mend mend => [.. mend.Used.Where(u => u.Movement is not null).Select(u => Return(Guid.CreateVersion7(), u, record))],
            MadeStep.TakeApart apart => [.. apart.Back.Where(u => u.Movement is not null).Select(u => new Movement.Use(Guid.CreateVersion7(), u.Item, u.Quantity) { Lot = u.Lot, For = record.Make.Title })],
            _ => [],
        };
    }

    private static Movement.Return Return(Guid id, UsedBeads back, MadeRecord record) => new(id, back.Item, back.Quantity) { Lot = back.Lot, For = record.Make.Title };

    /// <summary>The step with the lots that the stock took from, a line for each.</summary>
    private static MadeStep Resolved(IStockRows stock, MadeStep step) => step switch
    {
        MadeStep.Make make => make with { Used = Resolved(stock, make.Used) },
        MadeStep.Mend mend => mend with { Used = Resolved(stock, mend.Used) },
        MadeStep.TakeApart apart => apart with { Back = Resolved(stock, apart.Back) },
        _ => step,
    };

    private static ImmutableArray<UsedBeads> Resolved(IStockRows stock, ImmutableArray<UsedBeads> used) =>
    [
        .. used.SelectMany(u => u.Movement is not { } movement ? [u]
            : stock.Entries(u.Item).First(e => e.Movement.Id == movement).Changes.Select(c => u with { Lot = c.Lot, Quantity = c.By.Thousandths < 0 ? -c.By : c.By })),
    ];
}
