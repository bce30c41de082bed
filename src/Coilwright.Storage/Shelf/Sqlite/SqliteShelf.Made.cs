using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Made;
using Coilwright.Storage.Made;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : IMadeBook
{
    /// <inheritdoc/>
    Task<ImmutableArray<MadeRecord>> IMadeBook.ListAsync(CancellationToken cancel) => ReadAsync(connection => new MadeRows(connection, _clock).All(), cancel);

    /// <inheritdoc/>
    Task<MadeRecord?> IMadeBook.OpenAsync(Guid made, CancellationToken cancel) => ReadAsync(connection => new MadeRows(connection, _clock).Record(made), cancel);

    /// <inheritdoc/>
    async Task<MadeAnswer> IMadeBook.WriteDownAsync(ImmutableArray<MadeStep> steps, CancellationToken cancel)
    {
        var answer = await WriteAsync(connection => MadeDesk.WriteDown(new MadeRows(connection, _clock), new StockRows(connection, _data, _clock), steps, _data),
            answer => answer is MadeAnswer.Kept, fault => new MadeAnswer.NotKept(fault), cancel).ConfigureAwait(false);
        if (answer is MadeAnswer.Kept && steps.Any(s => s is MadeStep.Erase)) await SweepAsync().ConfigureAwait(false);
        return answer;
    }

    /// <summary>What was erased is out of the tables; this takes what is left of it out of the pages that are free and out of the log.</summary>
    private Task SweepAsync() => Task.Run(() =>
    {
        try
        {
            using var connection = _file.Connect();
            Execute(connection, "VACUUM");
            Execute(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
        }
        catch (Exception e) when (SqliteTrouble.Is(e))
        {
            // Somebody is reading, or the disk is full. Deleted bytes are written over already (secure_delete); the log is, when it is next begun anew.
        }
    });

    /// <summary>The rows of the book's tables.</summary>
    private sealed class MadeRows(SqliteConnection connection, TimeProvider clock) : IMadeRows
    {
        private const string Columns = """
            SELECT s.place, s.id, s.made, s.kind, s.day, s.at, s.number, s.piece, s.revision, s.content, p.who, p.note FROM made_steps s
            LEFT JOIN made_people p ON p.step = s.id
            """;

        public ImmutableArray<MadeRecord> All()
        {
            using var command = Command(connection, Columns + " ORDER BY s.place");
            return MadeText.Records(RowsOf(command));
        }

        public MadeRecord? Record(Guid made)
        {
            using var command = Command(connection, Columns + " WHERE s.made = $made ORDER BY s.place", ("$made", NameOf(made)));
            return MadeText.Records(RowsOf(command)) is [var record] ? record : null;
        }

        public MadeStep? Done(Guid step)
        {
            using var command = Command(connection, Columns + " WHERE s.id = $id", ("$id", NameOf(step)));
            return RowsOf(command) is [var row] ? MadeText.Read(row) : null;
        }

        public long LastNumber() => (long)SqliteShelfFile.Scalar(connection, "SELECT coalesce(max(number), 0) FROM made_steps")!;

        public bool HasState(Guid piece, long revision)
        {
            using var command = Command(connection, "SELECT 1 FROM steps WHERE piece = $piece AND revision = $revision", ("$piece", NameOf(piece)), ("$revision", revision));
            return command.ExecuteScalar() is not null;
        }

        public void Add(MadeStep step, long? number)
        {
            var make = step as MadeStep.Make;
            Execute(connection, """
                INSERT INTO made_steps (id, made, kind, day, at, number, piece, revision, content) VALUES ($id, $made, $kind, $day, $at, $number, $piece, $revision, $content)
                """,
                ("$id", NameOf(step.Id)), ("$made", NameOf(step.Made)), ("$kind", MadeText.Kind(step)), ("$day", step.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
                ("$at", TextOf(clock.GetUtcNow())), ("$number", number), ("$piece", make?.Piece is { } piece ? NameOf(piece) : null), ("$revision", make?.Revision), ("$content", MadeText.Of(step)));
            if (step.Who is not null || step.Note is not null)
                Execute(connection, "INSERT INTO made_people (step, who, note) VALUES ($step, $who, $note)", ("$step", NameOf(step.Id)), ("$who", step.Who), ("$note", step.Note));
        }

        public void Erase(Guid made)
        {
            // Zeroes where the text was, not a mark that it may be written over (https://www.sqlite.org/pragma.html#pragma_secure_delete).
            SqliteShelfFile.Scalar(connection, "PRAGMA secure_delete = ON");
            Execute(connection, "DELETE FROM made_people WHERE step IN (SELECT id FROM made_steps WHERE made = $made)", ("$made", NameOf(made)));
        }

        private static ImmutableArray<MadeRow> RowsOf(SqliteCommand command)
        {
            using var rows = command.ExecuteReader();
            var found = ImmutableArray.CreateBuilder<MadeRow>();
            while (rows.Read())
                found.Add(new MadeRow(rows.GetInt64(0), Guid.Parse(rows.GetString(1)), Guid.Parse(rows.GetString(2)), rows.GetString(3),
                    DateOnly.ParseExact(rows.GetString(4), "yyyy-MM-dd", CultureInfo.InvariantCulture), TimeOf(rows.GetString(5)), Number(rows, 6),
                    Text(rows, 7) is { } piece ? Guid.Parse(piece) : null, Number(rows, 8), rows.GetString(9), Text(rows, 10), Text(rows, 11)));
            return found.ToImmutable();
        }

        private static long? Number(SqliteDataReader rows, int column) => rows.IsDBNull(column) ? null : rows.GetInt64(column);

        private static string? Text(SqliteDataReader rows, int column) => rows.IsDBNull(column) ? null : rows.GetString(column);
    }
}
