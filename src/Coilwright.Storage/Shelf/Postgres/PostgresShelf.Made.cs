using System.Collections.Immutable;
using Coilwright.Core.Made;
using Coilwright.Storage.Made;

namespace Coilwright.Storage.Shelf.Postgres;

public sealed partial class PostgresShelf : IMadeBook
{
    /// <inheritdoc/>
    Task<ImmutableArray<MadeRecord>> IMadeBook.ListAsync(CancellationToken cancel) => ReadAsync(PostgresMade.AllAsync, cancel);

    /// <inheritdoc/>
    Task<MadeRecord?> IMadeBook.OpenAsync(Guid made, CancellationToken cancel) => ReadAsync(async turn => await PostgresMade.OfAsync(turn, [made]) is [var record] ? record : null, cancel);

    /// <inheritdoc/>
    Task<MadeAnswer> IMadeBook.WriteDownAsync(ImmutableArray<MadeStep> steps, CancellationToken cancel)
    {
        ImmutableArray<MadeStep> asked = [.. steps.Select(Kept)];
        return WriteAsync<MadeAnswer>(async turn =>
        {
            // Whoever writes here may take out of the drawers too: one turn for both.
            await turn.DoAsync("SELECT pg_advisory_xact_lock(@drawers)", ("drawers", Drawers));
            var book = await PostgresMade.LoadAsync(turn, asked, Now());
            var stock = await LoadAsync(turn, [.. asked.SelectMany(PostgresMade.ItemsOf).Concat(book.Items()).Distinct(StringComparer.Ordinal)], [.. asked.SelectMany(PostgresMade.MovementsOf)]);
            var answer = MadeDesk.WriteDown(book, stock, asked, _data);
            if (answer is not MadeAnswer.Kept) return answer;
            await stock.WriteAsync(turn);
            await book.WriteAsync(turn);
            return answer;
        }, answer => answer is MadeAnswer.Kept, fault => new MadeAnswer.NotKept(fault), async turn =>
        {
            await turn.DoAsync("SELECT pg_advisory_xact_lock(@drawers)", ("drawers", Drawers));
            var book = await PostgresMade.LoadAsync(turn, asked, Now());
            return asked.All(s => book.Done(s.Id) is { } done && MadeBooking.AreTheSame(done, s));
        }, cancel);
    }

    /// <summary>A step with its lines as the database can keep them.</summary>
    private static MadeStep Kept(MadeStep step)
    {
        step = step with { Who = Line(step.Who), Note = Line(step.Note) };
        return step switch
        {
            MadeStep.Make make => make with { Title = TextOf(make.Title), Used = Kept(make.Used) },
            MadeStep.Sell sell => sell with { Where = Line(sell.Where), Show = Line(sell.Show) },
            MadeStep.Give give => give with { Show = Line(give.Show) },
            MadeStep.Lose lose => lose with { Show = Line(lose.Show) },
            MadeStep.Mend mend => mend with { Done = TextOf(mend.Done), Used = Kept(mend.Used) },
            MadeStep.TakeApart apart => apart with { Back = Kept(apart.Back) },
            MadeStep.Pack pack => pack with { Show = TextOf(pack.Show) },
            MadeStep.Unpack unpack => unpack with { Show = TextOf(unpack.Show) },
            _ => step,
        };
    }

    private static ImmutableArray<UsedBeads> Kept(ImmutableArray<UsedBeads> used) => [.. used.Select(u => u with { Item = TextOf(u.Item) })];
}
