using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>A transaction on a connection of its own: all of it or nothing. What was not committed when it is disposed of is forgotten.</summary>
/// <param name="connection">The connection.</param>
/// <param name="transaction">The transaction.</param>
/// <param name="cancel">Gives up all that is asked in it.</param>
internal sealed class PostgresTurn(NpgsqlConnection connection, NpgsqlTransaction transaction, CancellationToken cancel) : IAsyncDisposable
{
    /// <summary>Does something.</summary>
    public Task DoAsync(string sql, params ReadOnlySpan<(string Name, object? Value)> values) => RunAsync(Ask(sql, values));

    /// <summary>Reads rows.</summary>
    public Task<List<T>> ReadAsync<T>(Func<NpgsqlDataReader, T> row, string sql, params ReadOnlySpan<(string Name, object? Value)> values) => RunAsync(Ask(sql, values), row);

    /// <summary>Commits. Not called off any more: whether it was done could not be told then.</summary>
    public Task CommitAsync() => transaction.CommitAsync(CancellationToken.None);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await transaction.DisposeAsync();
        await connection.DisposeAsync();
    }

    private NpgsqlCommand Ask(string sql, ReadOnlySpan<(string Name, object? Value)> values)
    {
        var command = new NpgsqlCommand(sql, connection, transaction);
        foreach (var (name, value) in values) command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        return command;
    }

    private async Task RunAsync(NpgsqlCommand asked)
    {
        await using var command = asked;
        await command.ExecuteNonQueryAsync(cancel);
    }

    private async Task<List<T>> RunAsync<T>(NpgsqlCommand asked, Func<NpgsqlDataReader, T> row)
    {
        await using var command = asked;
        await using var rows = await command.ExecuteReaderAsync(cancel);
        var read = new List<T>();
        while (await rows.ReadAsync(cancel)) read.Add(row(rows));
        return read;
    }
}
