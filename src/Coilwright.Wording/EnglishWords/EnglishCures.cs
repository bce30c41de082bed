using System.Collections.Frozen;
using Coilwright.Core.Cures;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of what a cure does, to be read after "Try it:".</summary>
internal static class EnglishCures
{
    internal static FrozenDictionary<string, string> Make() => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [CureCodes.CutAnew] = "cut {loops} {loops:loop|loops} of wire instead, {cutMm:cut}",
        [CureCodes.LargerCoil] = "a larger coil, {insideMm:mm} across inside, a loop of {loopMm:length}",
        [CureCodes.SmallerCoil] = "a smaller coil, {insideMm:mm} across inside, a loop of {loopMm:length}",
        [CureCodes.ThinnerWire] = "thinner wire, {gauge}, {wireMm:fine}",
        [CureCodes.Ream] = "ream the holes of {bead} to {boreMm:fine}",
        [CureCodes.LargerEndLoop] = "turn the loop at the {end} wider, {insideMm:fine} inside",
        [CureCodes.MoveToEnd] = "move bead {number}, {bead}, to the {end}",
        [CureCodes.StringMore] = "string {count} more {bead} after bead {after}",
        [CureCodes.StringMoreEverywhere] = "string {count} more {bead} after bead {after}, and in every repeat of it",
        [CureCodes.TakeOff] = "take off bead {number}, {bead}",
        [CureCodes.TakeOffEverywhere] = "take off bead {number}, {bead}, and in every repeat of it",
        [CureCodes.TakeOffRow] = "take off beads {first} to {last}",
        [CureCodes.StringAgain] = "string beads {first} to {last}, {times} times in all",
        [CureCodes.FocalOnTop] = "turn the whole piece round the wrist until {bead} lies on top",
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
