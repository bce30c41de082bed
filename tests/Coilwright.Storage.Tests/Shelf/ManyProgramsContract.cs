using Coilwright.Storage.Shelf;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>What every shelf does that several programs open at once.</summary>
public abstract class ManyProgramsContract
{
    /// <summary>One new and empty shelf, as so many programs open it.</summary>
    protected abstract IPieceShelf[] Programs(int howMany);

    [Fact]
    public async Task Of_many_writers_in_two_programs_each_step_is_kept_once_and_none_is_lost()
    {
        var programs = Programs(2);
        var id = Kept(await programs[0].AddAsync(Boardwalk)).Id;
        var kept = await Task.WhenAll(Enumerable.Range(0, 8).Select(writer => Task.Run(async () =>
        {
            var titles = new List<string>();
            long seen = 1;
            for (var step = 0; step < 10;)
            {
                switch (await programs[writer % 2].ChangeAsync(id, seen, To($"{writer}-{step}")))
                {
                    case ShelfAnswer.Kept done:
                        (seen, step) = (done.Now.Revision, step + 1);
                        titles.Add(done.Now.Piece.Title);
                        break;
                    case ShelfAnswer.Behind behind:
                        seen = behind.Now.Revision;
                        break;
                    case var answer:
                        throw new InvalidOperationException(answer.ToString());
                }
            }
            return titles;
        })));
        var history = await programs[0].HistoryAsync(id);
        Assert.Equal(81, history.Length);
        var states = new List<string>();
        foreach (var step in history.Skip(1)) states.Add((await programs[1].OpenAsync(id, step.Revision))!.Title);
        Assert.Equal(kept.SelectMany(titles => titles).Order(StringComparer.Ordinal), states.Order(StringComparer.Ordinal));
    }

    // Each round on an empty shelf of its own: two benches that are started together, and a third program that keeps a piece at that moment.
    [Fact]
    public async Task Of_two_programs_that_begin_together_one_puts_the_first_pieces_there()
    {
        for (var round = 0; round < 5; round++)
        {
            var programs = Programs(3);
            using var together = new Barrier(3);
            var added = Task.Run(() => AtOnce(2, p => p.AddAsync(Boardwalk with { Title = "mine" })));
            var answers = await Task.WhenAll(Enumerable.Range(0, 2).Select(which => Task.Run(() =>
                AtOnce(which, p => p.AddFirstAsync([Boardwalk with { Title = "one" }, Boardwalk with { Title = "two" }])))));
            Kept(await added);
            Assert.All(answers, a => Assert.Null(a.Why));
            // Hers may have come first: then there is nothing to put.
            var put = answers.Count(a => a.ArePut);
            Assert.InRange(put, 0, 1);
            Assert.Equal(put == 1 ? ["mine", "one", "two"] : ["mine"], (await programs[0].ListAsync()).Select(l => l.Title).Order(StringComparer.Ordinal));

            T AtOnce<T>(int which, Func<IPieceShelf, T> what)
            {
                together.SignalAndWait();
                return what(programs[which]);
            }
        }
    }
}
