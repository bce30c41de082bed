namespace Coilwright.Core.Stringing.Notation;

/// <summary>How large an order may be, as text or as list. Our own choice: far above any piece, and low enough that no text can tie up the bench.</summary>
public static class OrderLimits
{
    /// <summary>How deep brackets, mirrors with a centre and groups may stand inside one another.</summary>
    public const int Depth = 50;

    /// <summary>How many beads an order may string once everything is counted out.</summary>
    public const int Beads = 200_000;

    /// <summary>How many stringings of named groups an order may hold, inner ones counted too.</summary>
    public const int GroupStringings = 200_000;

    /// <summary>How many characters (UTF-16 units) an order's text may have.</summary>
    public const int TextLength = 1_000_000;

    /// <summary>The largest count. The smallest is 1.</summary>
    public const int Count = 200_000;

    /// <summary>How many faults are told at once; the first ones by place.</summary>
    public const int FaultsTold = 50;
}
