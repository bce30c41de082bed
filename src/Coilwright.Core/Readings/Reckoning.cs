using Coilwright.Core.Pieces;

namespace Coilwright.Core.Readings;

/// <summary>The one entry point: every reading of a piece.</summary>
public static class Reckoning
{
    /// <summary>Reckons a piece.</summary>
    public static Reckoned Of(Piece piece, ReckoningData data, ReckonRequest? request = null) => throw new NotSupportedException();
}
