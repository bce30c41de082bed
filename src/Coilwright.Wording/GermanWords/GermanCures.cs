using System.Collections.Frozen;
using Coilwright.Core.Cures;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of what a cure does.</summary>
internal static class GermanCures
{
    internal static FrozenDictionary<string, string> Make() => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [CureCodes.CutAnew] = "stattdessen {loops} {loops:Ring|Ringe} Draht abschneiden, {cutMm:cut}",
        [CureCodes.LargerCoil] = "eine größere Spirale, innen {insideMm:mm} weit, ein Ring von {loopMm:length}",
        [CureCodes.SmallerCoil] = "eine kleinere Spirale, innen {insideMm:mm} weit, ein Ring von {loopMm:length}",
        [CureCodes.ThinnerWire] = "dünnerer Draht, {gauge}, {wireMm:fine}",
        [CureCodes.Ream] = "die Löcher von {bead} auf {boreMm:fine} aufreiben",
        [CureCodes.LargerEndLoop] = "die Öse am {end} weiter biegen, innen {insideMm:fine}",
        [CureCodes.MoveToEnd] = "Perle {number}, {bead}, stattdessen am {end} auffädeln",
        [CureCodes.StringMore] = "nach Perle {after} noch {count} {bead} auffädeln",
        [CureCodes.StringMoreEverywhere] = "nach Perle {after} noch {count} {bead} auffädeln, und so in jeder Wiederholung",
        [CureCodes.TakeOff] = "Perle {number}, {bead}, herunternehmen",
        [CureCodes.TakeOffEverywhere] = "Perle {number}, {bead}, herunternehmen, und so in jeder Wiederholung",
        [CureCodes.TakeOffRow] = "die Perlen {first} bis {last} herunternehmen",
        [CureCodes.StringAgain] = "die Perlen {first} bis {last} insgesamt {times} Mal auffädeln",
        [CureCodes.FocalOnTop] = "das ganze Stück um das Handgelenk drehen, bis {bead} oben liegt",
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
