using Coilwright.KillWhileSaving;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>A program is killed while it saves. The long form, with 200 kills, is tests/kill-while-saving.sh.</summary>
public class KillWhileSavingTests
{
    [Fact]
    public async Task No_edit_that_was_acknowledged_is_lost_to_a_kill()
    {
        using var folder = new TempFolder();
        var figures = await KillCheck.RunAsync(20, folder.Path);
        Assert.True(figures.IsSound, figures.ToString());
        // The kills must fall into the saving, or this test says little.
        Assert.True(figures.Acknowledged > 100, figures.ToString());
    }

    [Fact]
    public async Task No_delivery_that_was_acknowledged_is_lost_to_a_kill_and_none_is_there_by_half()
    {
        using var folder = new TempFolder();
        var figures = await StockKillCheck.RunAsync(20, folder.Path);
        Assert.True(figures.IsSound, figures.ToString());
        // The kills must fall into the saving, or this test says little.
        Assert.True(figures.Acknowledged > 100, figures.ToString());
    }
}
