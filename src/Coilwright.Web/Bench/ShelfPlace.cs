namespace Coilwright.Web.Bench;

/// <summary>Where her pieces lie, as pages tell it.</summary>
public abstract record ShelfPlace
{
    private ShelfPlace() { }

    /// <summary>A file on this machine.</summary>
    /// <param name="Path">Its path.</param>
    public sealed record File(string Path) : ShelfPlace;

    /// <summary>A database.</summary>
    /// <param name="Name">The database and its server.</param>
    /// <param name="ToolOptions">The same, as PostgreSQL's own tools take it.</param>
    public sealed record Database(string Name, string ToolOptions) : ShelfPlace;
}
