using System.Collections.Immutable;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Tray;

/// <summary>What a line of a table would do to the tray.</summary>
public enum TrayRowDoes
{
    /// <summary>It brings a kind that is not there yet.</summary>
    Adds,

    /// <summary>It says something else of a kind that is there.</summary>
    Changes,

    /// <summary>It says what is there already.</summary>
    Nothing,

    /// <summary>Something is wrong with it.</summary>
    IsWrong,
}

/// <summary>What a line changes in one column.</summary>
/// <param name="Column">Name of the column.</param>
/// <param name="Before">What was there; empty for nothing.</param>
/// <param name="After">What will be there; empty for nothing.</param>
public sealed record TrayCellChange(string Column, string Before, string After);

/// <summary>A line of a table, looked through.</summary>
/// <param name="Line">Where it begins in the file, from 1.</param>
/// <param name="Key">The key that it is for; what could be read of it where something is wrong.</param>
/// <param name="Does">What it would do.</param>
/// <param name="Kind">The kind as it would be; null where something is wrong.</param>
/// <param name="Changes">What it changes of a kind that is there.</param>
/// <param name="Faults">Everything wrong with it.</param>
public sealed record TrayRow(int Line, string Key, TrayRowDoes Does, TrayKind? Kind, ImmutableArray<TrayCellChange> Changes, ImmutableArray<Fault> Faults);

/// <summary>A table looked through against a tray: nothing is done yet, and nothing will be while a line is wrong.</summary>
/// <param name="Rows">Its lines.</param>
/// <param name="Faults">What keeps the table from being read as it is matched; empty when nothing does.</param>
public sealed record TrayImport(ImmutableArray<TrayRow> Rows, ImmutableArray<Fault> Faults)
{
    /// <summary>Whether it can be taken in: nothing is wrong with it or with a line of it.</summary>
    public bool IsSound { get; } = Faults.IsEmpty && Rows.All(r => r.Does != TrayRowDoes.IsWrong);

    /// <summary>How many lines would do something.</summary>
    public int Count(TrayRowDoes does) => Rows.Count(r => r.Does == does);

    /// <summary>The kinds that are new or others than before; empty while it is not sound.</summary>
    public ImmutableArray<TrayEdit> Edits => IsSound ? [.. Rows.Where(r => r.Does is TrayRowDoes.Adds or TrayRowDoes.Changes).Select(r => new TrayEdit.Put(r.Kind!))] : [];
}

/// <summary>Something that is done to a tray.</summary>
public abstract record TrayEdit
{
    private TrayEdit() { }

    /// <summary>Whom it is done to.</summary>
    public abstract string Key { get; }

    /// <summary>Puts a kind in, or puts it in the place of the one of its key.</summary>
    public sealed record Put(TrayKind Kind) : TrayEdit
    {
        /// <inheritdoc/>
        public override string Key => Kind.Key;
    }

    /// <summary>Takes a kind out. Pieces that have it keep it.</summary>
    public sealed record TakeOut(string Which) : TrayEdit
    {
        /// <inheritdoc/>
        public override string Key => Which;
    }
}
