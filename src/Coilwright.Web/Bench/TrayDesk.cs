using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Tray;
using Coilwright.Storage;
using Coilwright.Storage.Tray;
using Coilwright.Web.Hosting;
using Coilwright.Wording;

namespace Coilwright.Web.Bench;

/// <summary>The tray as it was at some change of it.</summary>
/// <param name="Revision">The change.</param>
/// <param name="Kinds">Every kind by key.</param>
/// <param name="Index">The same, laid out for finding.</param>
public sealed record TrayView(long Revision, ImmutableDictionary<string, TrayKind> Kinds, TrayIndex Index);

/// <summary>The bead tray in memory: read once, then only what is new.</summary>
public sealed class TrayDesk : IDisposable
{
    private readonly IBeadTray _tray;
    private readonly ReckoningData _data;
    private readonly ColourFamilies _families;

    // One reads what is new while the others wait for it.
    private readonly SemaphoreSlim _turn = new(1, 1);
    private TrayView? _view;

    /// <summary>Reads nothing yet.</summary>
    public TrayDesk(IBeadTray tray, BenchOptions options, ReckoningData data)
    {
        (_tray, _data) = (tray, data);
        var (families, faults) = DataFiles.LoadColourFamilies(Path.Combine(options.ProgramFolder, "data"));
        _families = families ?? throw new InvalidDataException(string.Join('\n', faults.Select(f => Languages.English.Say(f).Message)));
    }

    /// <summary>The tray as it is.</summary>
    public async Task<TrayView> NowAsync(CancellationToken cancel = default)
    {
        await _turn.WaitAsync(cancel).ConfigureAwait(false);
        try
        {
            var news = await _tray.SinceAsync(_view?.Revision ?? 0, cancel).ConfigureAwait(false);
            // A backup that was brought back may be of before what is known here.
            if (_view is { } known && news.Revision < known.Revision)
            {
                _view = null;
                news = await _tray.SinceAsync(0, cancel).ConfigureAwait(false);
            }
            if (_view is { } same && news.Revision == same.Revision) return same;
            var before = _view?.Kinds ?? ImmutableDictionary<string, TrayKind>.Empty;
            var kinds = before.SetItems(news.Put.Select(k => KeyValuePair.Create(k.Key, k))).RemoveRange(news.TakenOut);
            return _view = await Task.Run(() => new TrayView(news.Revision, kinds, new TrayIndex(kinds.Values, TrayVocabulary.All, _families)), cancel).ConfigureAwait(false);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>Looks a list through. Takes as long as it takes: not for the page's own thread.</summary>
    public TrayImport Read(TrayTable table, TrayMatching matching, TrayView view) => TrayReading.Read(table, matching, view.Kinds, TrayVocabulary.All, _data);

    /// <summary>Changes the tray.</summary>
    public Task<TrayAnswer> ChangeAsync(long seen, ImmutableArray<TrayEdit> edits) => _tray.ChangeAsync(seen, edits);

    /// <summary>What is wrong with a kind; the kind when nothing is.</summary>
    public ImmutableArray<Fault> Check(Core.Beads.BeadDescription description, string? drawer, out TrayKind? kind) => TrayKind.Check(description, drawer, _data, out kind);

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();
}
