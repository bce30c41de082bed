using System.Collections.Immutable;
using Coilwright.Core.Made;
using Coilwright.Storage.Made;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>The rows of the book's tables that steps are about, read before it is decided and written after that.</summary>
internal sealed class PostgresMade : IMadeRows
{
    private const string Columns = """
        SELECT s.place, s.id, s.made, s.kind, s.day, s.at, s.number, s.piece, s.revision, s.content, p.who, p.note FROM coilwright.made_steps s
        LEFT JOIN coilwright.made_people p ON p.step = s.id
        """;

    private readonly Dictionary<Guid, MadeRecord> _records;
    private readonly Dictionary<Guid, MadeStep> _done;
    private readonly HashSet<(Guid, long)> _states;
    private readonly DateTimeOffset _at;
    private readonly List<Func<PostgresTurn, Task>> _writes = [];
    private long _last;

    private PostgresMade(IEnumerable<MadeRecord> records, IEnumerable<MadeStep> done, IEnumerable<(Guid, long)> states, long last, DateTimeOffset at)
    {
        _records = records.ToDictionary(r => r.Id);
        _done = _records.Values.SelectMany(r => r.Entries).Select(e => e.Step).Concat(done).DistinctBy(s => s.Id).ToDictionary(s => s.Id);
        (_states, _last, _at) = ([.. states], last, at);
    }

    /// <summary>Every record, by number.</summary>
    public static async Task<ImmutableArray<MadeRecord>> AllAsync(PostgresTurn turn) => MadeText.Records(await turn.ReadAsync(RowOf, Columns + " ORDER BY s.place"));

    /// <summary>Some records, by number.</summary>
    public static async Task<ImmutableArray<MadeRecord>> OfAsync(PostgresTurn turn, Guid[] made) =>
        MadeText.Records(await turn.ReadAsync(RowOf, Columns + " WHERE s.made = ANY (@made) ORDER BY s.place", ("made", made)));

    /// <summary>Reads what steps are about.</summary>
    public static async Task<PostgresMade> LoadAsync(PostgresTurn turn, ImmutableArray<MadeStep> steps, DateTimeOffset at)
    {
        var records = await OfAsync(turn, [.. steps.Select(s => s.Made)]);
        var done = await turn.ReadAsync(RowOf, Columns + " WHERE s.id = ANY (@ids)", ("ids", steps.Select(s => s.Id).ToArray()));
        var pieces = steps.OfType<MadeStep.Make>().Select(m => m.Piece).OfType<Guid>().ToArray();
        var states = await turn.ReadAsync(row => (row.GetGuid(0), row.GetInt64(1)), "SELECT piece, revision FROM coilwright.steps WHERE piece = ANY (@pieces)", ("pieces", pieces));
        var last = await turn.ReadAsync(row => row.GetInt64(0), "SELECT coalesce(max(number), 0) FROM coilwright.made_steps");
        return new PostgresMade(records, done.Select(MadeText.Read), states, last[0], at);
    }

    /// <summary>The items of stock that the records name.</summary>
    public IEnumerable<string> Items() => _done.Values.SelectMany(ItemsOf);

    /// <summary>The items of stock that a step names.</summary>
    public static IEnumerable<string> ItemsOf(MadeStep step) => LinesOf(step).Select(u => u.Item);

    /// <summary>The movements of stock that a step books.</summary>
    public static IEnumerable<Guid> MovementsOf(MadeStep step) => LinesOf(step).Select(u => u.Movement).OfType<Guid>();

    public MadeRecord? Record(Guid made) => _records.GetValueOrDefault(made);

    public MadeStep? Done(Guid step) => _done.GetValueOrDefault(step);

    public long LastNumber() => _last;

    public bool HasState(Guid piece, long revision) => _states.Contains((piece, revision));

    public void Add(MadeStep step, long? number)
    {
        _done.Add(step.Id, step);
        // Its place is given when it is written; until then it is only the last.
        var entry = new MadeEntry(long.MaxValue, _at, step);
        _records[step.Made] = number is { } first ? new MadeRecord(_last = first, [entry]) : new MadeRecord(_records[step.Made].Number, _records[step.Made].Entries.Add(entry));
        _writes.Add(async turn =>
        {
            var make = step as MadeStep.Make;
            await turn.DoAsync("""
                INSERT INTO coilwright.made_steps (id, made, kind, day, at, number, piece, revision, content) VALUES (@id, @made, @kind, @day, @at, @number, @piece, @revision, @content)
                """,
                ("id", step.Id), ("made", step.Made), ("kind", MadeText.Kind(step)), ("day", step.On), ("at", _at.UtcDateTime), ("number", number), ("piece", make?.Piece), ("revision", make?.Revision),
                ("content", MadeText.Of(step)));
            if (step.Who is not null || step.Note is not null)
                await turn.DoAsync("INSERT INTO coilwright.made_people (step, who, note) VALUES (@step, @who, @note)", ("step", step.Id), ("who", step.Who), ("note", step.Note));
        });
    }

    public void Erase(Guid made)
    {
        var record = _records[made];
        _records[made] = new MadeRecord(record.Number, [.. record.Entries.Select(e => e with { Step = e.Step with { Who = null, Note = null } })]);
        _writes.Add(turn => turn.DoAsync("DELETE FROM coilwright.made_people WHERE step IN (SELECT id FROM coilwright.made_steps WHERE made = @made)", ("made", made)));
    }

    /// <summary>Writes down what was added.</summary>
    public async Task WriteAsync(PostgresTurn turn)
    {
        foreach (var write in _writes) await write(turn);
    }

    private static ImmutableArray<UsedBeads> LinesOf(MadeStep step) => step switch
    {
        MadeStep.Make make => make.Used,
        MadeStep.Mend mend => mend.Used,
        MadeStep.TakeApart apart => apart.Back,
        _ => [],
    };

    private static MadeRow RowOf(NpgsqlDataReader row) => new(row.GetInt64(0), row.GetGuid(1), row.GetGuid(2), row.GetString(3), row.GetFieldValue<DateOnly>(4), new DateTimeOffset(row.GetDateTime(5)),
        row.IsDBNull(6) ? null : row.GetInt64(6), row.IsDBNull(7) ? null : row.GetGuid(7), row.IsDBNull(8) ? null : row.GetInt64(8), row.GetString(9),
        row.IsDBNull(10) ? null : row.GetString(10), row.IsDBNull(11) ? null : row.GetString(11));
}
