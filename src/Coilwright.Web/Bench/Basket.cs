namespace Coilwright.Web.Bench;

/// <summary>How many of which piece she means to make: for the shopping and for the wire, as long as her window is open.</summary>
public sealed class Basket
{
    /// <summary>Most of one piece.</summary>
    public const int Most = 999;

    private readonly Dictionary<Guid, int> _counts = [];

    /// <summary>How many of a piece; 0 when none.</summary>
    public int this[Guid piece]
    {
        get => _counts.GetValueOrDefault(piece);
        set
        {
            if (value <= 0) _counts.Remove(piece);
            else _counts[piece] = Math.Min(value, Most);
        }
    }

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => _counts.Count == 0;

    /// <summary>The pieces and how many of each.</summary>
    public IEnumerable<KeyValuePair<Guid, int>> Pieces => _counts;

    /// <summary>Spares in a hundred of all beads used.</summary>
    public decimal SparePercent { get; set; }

    /// <summary>Spares with each piece.</summary>
    public int SparePerPiece { get; set; }

    /// <summary>Whether what is in stock is used first.</summary>
    public bool UseStock { get; set; } = true;
}
