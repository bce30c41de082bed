using System.Collections.Concurrent;
using Coilwright.Core.Settle;

namespace Coilwright.Web.Bench;

/// <summary>How the arm was last held, and what was measured of it, for each piece: told on one page it holds on the others, until the program ends. Changes nothing in the piece.</summary>
/// <remarks>May be asked by many at once.</remarks>
public sealed class ArmsInMind
{
    private readonly ConcurrentDictionary<Guid, ArmMeasures> _arms = [];

    /// <summary>The arm that a piece is looked at on; the usual one until another was told.</summary>
    public ArmMeasures Of(Guid piece) => _arms.GetValueOrDefault(piece, ArmMeasures.Usual);

    /// <summary>Keeps it.</summary>
    public void Keep(Guid piece, ArmMeasures arm) => _arms[piece] = arm;
}
