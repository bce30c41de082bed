using System.Collections.Concurrent;
using Coilwright.KillWhileSaving;
using Coilwright.OwnDatabase;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>A program is killed while it saves, or the server that it saves to. The long form, with 200 kills, is tests/kill-while-saving.sh.</summary>
public class KillWhileSavingTests
{
    [Fact]
    public async Task No_edit_that_was_acknowledged_is_lost_to_a_kill()
    {
        using var folder = new TempFolder();
        AssertSound(await KillCheck.RunAsync(20, new KillFolder(folder.Path)));
    }

    [Fact]
    public async Task No_edit_that_a_database_acknowledged_is_lost_to_a_kill_of_who_saves()
    {
        await using var server = await PostgresServer.StartNewAsync(durable: true);
        AssertSound(await KillCheck.RunAsync(20, new KillDatabase(await server.NewDatabaseAsync())));
    }

    [Fact]
    public async Task No_edit_is_lost_or_taken_twice_when_the_server_is_ended_while_it_saves()
    {
        await using var server = await PostgresServer.StartNewAsync(durable: true);
        using var shelves = new PostgresShelves();
        var shelf = shelves.Open(await server.NewDatabaseAsync(), TimeSpan.FromMilliseconds(200));
        var now = SqliteShelves.Kept(await shelf.AddAsync(SqliteShelves.Boardwalk));
        using var enough = new CancellationTokenSource();
        var (acknowledged, notKept) = (new ConcurrentQueue<string>(), 0);
        // As the bench does: what was not kept is offered again until it is.
        var saving = Task.Run(async () =>
        {
            for (var step = 0; !enough.IsCancellationRequested; step++)
            {
                var change = SqliteShelves.To($"{step}");
                while (true)
                {
                    var answer = await shelf.ChangeAsync(now.Id, now.Revision, change);
                    if (answer is ShelfAnswer.Kept kept)
                    {
                        now = kept.Now;
                        acknowledged.Enqueue(now.Piece.Title);
                        break;
                    }
                    Assert.IsType<ShelfAnswer.NotKept>(answer);
                    notKept++;
                }
            }
        });
        for (var end = 0; end < 8; end++)
        {
            var until = acknowledged.Count + 20 + end;
            while (acknowledged.Count < until && !saving.IsCompleted) await Task.Delay(1);
            server.Stop("immediate");
            server.Start();
        }
        await enough.CancelAsync();
        await saving;
        Assert.NotEqual(0, notKept); // it was away while something was to be saved
        var titles = new List<string>();
        foreach (var step in (await shelf.HistoryAsync(now.Id)).Skip(1)) titles.Add((await shelf.OpenAsync(now.Id, step.Revision))!.Title);
        Assert.Equal(acknowledged, titles);
    }

    [Fact]
    public async Task No_delivery_that_was_acknowledged_is_lost_to_a_kill_and_none_is_there_by_half()
    {
        using var folder = new TempFolder();
        AssertSound(await StockKillCheck.RunAsync(20, new KillFolder(folder.Path)));
    }

    [Fact]
    public async Task No_delivery_that_a_database_acknowledged_is_lost_to_a_kill_and_none_is_there_by_half()
    {
        await using var server = await PostgresServer.StartNewAsync(durable: true);
        AssertSound(await StockKillCheck.RunAsync(20, new KillDatabase(await server.NewDatabaseAsync())));
    }

    [Fact]
    public async Task No_piece_that_was_acknowledged_is_lost_to_a_kill_and_its_beads_are_out_of_stock_with_it()
    {
        using var folder = new TempFolder();
        AssertSound(await MadeKillCheck.RunAsync(20, new KillFolder(folder.Path)));
    }

    [Fact]
    public async Task No_piece_that_a_database_acknowledged_is_lost_to_a_kill_and_its_beads_are_out_of_stock_with_it()
    {
        await using var server = await PostgresServer.StartNewAsync(durable: true);
        AssertSound(await MadeKillCheck.RunAsync(20, new KillDatabase(await server.NewDatabaseAsync())));
    }

    [Fact]
    public async Task No_list_that_a_tray_acknowledged_is_lost_to_a_kill_and_none_is_there_by_half()
    {
        using var folder = new TempFolder();
        AssertSound(await TrayKillCheck.RunAsync(20, new KillFolder(folder.Path)));
    }

    [Fact]
    public async Task No_list_that_a_tray_in_a_database_acknowledged_is_lost_to_a_kill_and_none_is_there_by_half()
    {
        await using var server = await PostgresServer.StartNewAsync(durable: true);
        AssertSound(await TrayKillCheck.RunAsync(20, new KillDatabase(await server.NewDatabaseAsync())));
    }

    private static void AssertSound(KillFigures figures)
    {
        Assert.True(figures.IsSound, figures.ToString());
        // The kills must fall into the saving, or this test says little.
        Assert.True(figures.Acknowledged > 100, figures.ToString());
    }

    private static void AssertSound(StockKillFigures figures)
    {
        Assert.True(figures.IsSound, figures.ToString());
        Assert.True(figures.Acknowledged > 100, figures.ToString());
    }

    private static void AssertSound(MadeKillFigures figures)
    {
        Assert.True(figures.IsSound, figures.ToString());
        Assert.True(figures.Acknowledged > 100, figures.ToString());
    }

    private static void AssertSound(TrayKillFigures figures)
    {
        Assert.True(figures.IsSound, figures.ToString());
        Assert.True(figures.Acknowledged > 100, figures.ToString());
    }
}
