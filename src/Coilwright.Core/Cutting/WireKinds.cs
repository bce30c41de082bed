using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Cutting;

/// <summary>Whether two coils are the same wire, so that what was reckoned for one may be cut from the other.</summary>
/// <remarks>Thickness and loop may differ by what labels, calipers and rulers do (our choice: <see cref="ReckoningChoices.SameWireMm"/>, <see cref="ReckoningChoices.SameLoopShare"/>).
/// A steel that one of them does not tell is no difference.</remarks>
public static class WireKinds
{
    // Rounding of a gauge's formula and of pi.
    private const double Hair = 1e-9;

    /// <summary>Whether they are.</summary>
    public static bool Same(CoilWire a, CoilWire b, ReckoningChoices choices) =>
        Math.Abs(a.WireMm - b.WireMm) <= choices.SameWireMm + Hair
        && Math.Abs(a.LoopMm - b.LoopMm) <= choices.SameLoopShare * Math.Min(a.LoopMm, b.LoopMm) + Hair
        && (a.Steel is null || b.Steel is null || a.Steel.Key == b.Steel.Key);
}
