using Coilwright.Core.Cutting;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>A cutting plan in a maker's words.</summary>
public sealed class CutSentences(CuttingPlan plan, Language language)
{
    private readonly CutWords _words = language.Cut;

    /// <summary>What is to be cut: letter, name, how many, length of one.</summary>
    public IEnumerable<string[]> What() => plan.Pieces.Select((piece, p) => new[]
    {
        KeyLetters.Of(p), piece.Name, language.Number(piece.Count, 0), language.LengthUp(piece.CutMm),
    });

    /// <summary>Which coils these are.</summary>
    public string Of(CutCoil coil)
    {
        var lot = plan.Lots[coil.Lot];
        // Tenths, cut off: what is told must be there.
        return language.Sentence(lot.IsOffcut ? _words.OffcutCoil : _words.Coil, ("times", coil.Times > 1 ? coil.Times : null), ("name", lot.Name),
            ("loops", language.Number(Math.Floor(lot.Loops * 10 + 1e-6) / 10, 1)), ("mm", lot.WholeMm));
    }

    /// <summary>The cuts of a coil, in order.</summary>
    public IEnumerable<string> Cuts(CutCoil coil) =>
        coil.Cuts.Select(cut => language.Fill(_words.Cut, ("letter", KeyLetters.Of(cut.Piece)), ("name", plan.Pieces[cut.Piece].Name), ("mark", Mark(cut.Mark, language.LengthUp))));

    /// <summary>What is left of a coil.</summary>
    public string Left(CutCoil coil) => coil.LeftMm == 0 ? _words.LeftNone
        : language.Sentence(coil.IsKept ? _words.LeftKept : _words.LeftShort, ("mark", Mark(coil.Left, language.Length)), ("mm", coil.LeftMm));

    /// <summary>What was not cut and why, how much is missing, and what would do.</summary>
    public IEnumerable<string> NotCut()
    {
        foreach (var not in plan.NotCut)
        {
            var piece = plan.Pieces[not.Piece];
            var template = not.Why switch
            {
                WhyNotCut.NoSuchWire => _words.NoSuchWire,
                WhyNotCut.LongerThanAny => _words.LongerThanAny,
                _ => _words.TooLittle,
            };
            yield return language.Sentence(template, ("count", not.Count), ("name", piece.Name), ("mm", piece.WholeMm), ("wireMm", piece.Wire.WireMm), ("loopMm", piece.Wire.LoopMm),
                ("steel", piece.Wire.Steel?.Key));
        }
        if (plan.NotCut.IsEmpty) yield break;
        yield return language.Sentence(_words.Missing, ("mm", plan.NotCut.Sum(n => n.LengthMm)));
        if (plan.NotCut.Any(n => n.Why == WhyNotCut.TooLittle))
            yield return plan.IsProven ? _words.MissingProven
                : language.Sentence(_words.MissingAtLeast, ("mm", plan.LeastMissingMm + plan.NotCut.Where(n => n.Why != WhyNotCut.TooLittle).Sum(n => n.LengthMm)));
        foreach (var more in plan.More) yield return language.Sentence(_words.More, ("count", more.Count), ("name", plan.Lots[more.Lot].Name));
    }

    /// <summary>What is begun, what it costs, and what is known of better plans.</summary>
    public IEnumerable<string> Sum()
    {
        yield return language.Sentence(_words.Begun, ("coils", plan.NewCoils), ("offcuts", plan.OffcutsUsed > 0 ? plan.OffcutsUsed : null));
        if (plan.Cost is { } cost) yield return language.Sentence(_words.Cost, ("cost", language.Amount(cost)));
        if (plan.ComesOut)
            yield return (plan.Aim, plan.IsProven) switch
            {
                (CuttingAim.Cost, true) => _words.CostProven,
                (CuttingAim.Cost, false) => language.Sentence(_words.CostAtLeast, ("least", language.Amount(plan.LeastCost ?? 0))),
                (_, true) => _words.CoilsProven,
                _ => language.Sentence(_words.CoilsAtLeast, ("least", plan.LeastNewCoils)),
            };
        yield return language.Sentence(_words.KeptAndWaste, ("kept", plan.KeptMm), ("waste", plan.WasteMm));
        if (plan.WasStopped) yield return _words.Stopped;
    }

    /// <summary>The offcuts to keep, longest first.</summary>
    public IEnumerable<string> Keep() => plan.Coils.Where(c => c.IsKept).OrderByDescending(c => c.LeftMm)
        .Select(c => language.Fill(_words.KeepLine, ("times", c.Times), ("mm", c.LeftMm), ("mark", Mark(c.Left, language.Length)), ("name", plan.Lots[c.Lot].Name)));

    // What is cut may only be rounded up; what is left is told as it is.
    private string Mark(LoopMark mark, Func<double, string> rounded) => language.Fill(_words.Mark, ("loops", mark.Loops > 0 ? mark.Loops : null),
        ("both", mark is { Loops: > 0, RestMm: > 0 } ? 1 : null), ("rest", mark.RestMm > 0 || mark.Loops == 0 ? rounded(mark.RestMm) : null));
}
