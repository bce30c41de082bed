using Coilwright.Core.Stock;

namespace Coilwright.Storage.Stock;

/// <summary>The words by which stock is written down.</summary>
internal static class StockWords
{
    public static StockUnit Unit(string word) => word switch { "mm" => StockUnit.Millimetre, "g" => StockUnit.Gram, _ => StockUnit.Each };

    public static string Kind(Movement movement) => movement switch
    {
        Movement.Receive => "receive",
        Movement.Use => "use",
        Movement.Reserve => "reserve",
        Movement.Release => "release",
        Movement.Recount => "recount",
        Movement.Return => "return",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
