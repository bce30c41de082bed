using System.Globalization;
using Coilwright.Core.Readings;
using Coilwright.Core.Settle;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The report that a maker prints and pins up: what to string, what to cut, what to mind. The engine's own figures stand at the end.</summary>
/// <remarks>Lays out tables, and the sentences that <see cref="ReadingSentences"/> makes.</remarks>
internal sealed class ReckonText
{
    private const int PairsShown = 10, BeadsShown = 1000, WristsShown = 14;

    // Groups less than half a millimetre off lie square as far as anyone can see.
    private const double SquareWithinMm = 0.5;

    private readonly Reckoned _r;
    private readonly Language _language;
    private readonly ReportWords _words;
    private readonly BeadNames _names;
    private readonly ReadingSentences _sentences;
    private readonly TextPage _page = new();

    private ReckonText(Reckoned reckoned, ReckonRequest request, Language language)
    {
        (_r, _language, _words) = (reckoned, language, language.Report);
        _names = new BeadNames(reckoned);
        _sentences = new ReadingSentences(reckoned, language, request);
    }

    /// <summary>The report.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="request">What was asked.</param>
    /// <param name="language">The language.</param>
    /// <param name="drawing">The file that the turn rows were drawn in, or null.</param>
    /// <param name="settled">How it sits, where it was reckoned with that; null where not.</param>
    public static string Of(Reckoned reckoned, ReckonRequest request, Language language, string? drawing, Settled? settled = null)
    {
        var text = new ReckonText(reckoned, request, language);
        text.Piece();
        if (settled is not null) text.Settled(settled);
        text.Fit();
        text.Notices();
        text.Beads();
        text.OrderByTurn();
        text.Focal();
        text.LiningUp();
        text.Wire();
        text.Holes();
        text.Weight();
        text.Cautions();
        text.Details();
        text.Wrists();
        if (drawing is not null)
        {
            text._page.Blank();
            text._page.Paragraph(language.Sentence(language.Help.Drawn, ("file", drawing)));
        }
        return text._page.ToString();
    }

    private void Paragraphs(IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences) _page.Paragraph(sentence);
    }

    private void Piece()
    {
        _page.Title(_r.Piece.Title);
        Paragraphs(_sentences.Piece());
    }

    private void Settled(Settled settled) => _page.Paragraph(settled.Worn is { } worn
        ? _language.Sentence(_language.Settle.Reckoned, ("circumferenceMm", worn.CircumferenceMm), ("quickMm", 2 * Math.PI * settled.Quick.RadiusMm))
        : _language.Sentence(_language.Settle.ReckonedQuickly, ("why", new SettleSentences(settled, _r.Piece, _r.Choices, _language).Why)));

    private void Fit()
    {
        _page.Heading(_words.Fit);
        _page.Paragraph(_sentences.Fits());
        Paragraphs(_sentences.FitMore());
    }

    private void Notices()
    {
        _page.Heading(_words.Notices);
        if (_r.Notices.IsEmpty) _page.Paragraph(_words.NoNotices);
        foreach (var notice in _r.Notices)
        {
            var said = _language.Say(notice, _names.Of);
            var mark = $"[{_language.Terms.Severities[notice.Severity]}] ";
            _page.Hanging(mark, said.Message);
            _page.Paragraph($"{_words.WhatToDo} {said.WhatToDo}", mark.Length);
        }
    }

    private void Beads()
    {
        _page.Heading(_words.Beads);
        var rows = _r.Counts.Select(k => new[]
        {
            k.Letter, Whole(k.Count), k.Bead.Name, Mm(k.Bead.LengthMm), Across(k.Bead.WidthMm, k.Bead.ThicknessMm), _language.Length(k.RuledMm),
        }).Append(["", Whole(_r.Piece.Order.Count), _words.Together, "", "", _language.Length(_r.RuledMm)]);
        _page.Table([(_words.Key, false), (_words.Use, true), (_words.Bead, false), (_words.AlongHole, true), (_words.Across, false),
            (_words.LaidStraight, false)], rows, 2);
        _page.Paragraph(_language.Sentence(_words.StraightAndWorn, ("ruledMm", _r.RuledMm), ("beadedMm", _r.Lie.BeadedMm)));
    }

    private void OrderByTurn()
    {
        _page.Heading(_words.OrderByTurn);
        var kinds = _r.Piece.Order.Kinds;
        var shown = Math.Min(kinds.Length, BeadsShown);
        for (int first = 0, next; first < shown; first = next)
        {
            var turn = _r.Lie.Turn(first);
            next = first;
            while (next < shown && _r.Lie.Turn(next) == turn) next++;
            _page.Hanging("  " + _language.Fill(_words.Turn, ("turn", turn)) + "  ", LetterRuns.Of(_r, first, next - first));
        }
        if (shown < kinds.Length) _page.Paragraph(_language.Sentence(_words.OrderCutShort, ("shown", shown), ("beads", kinds.Length)));
    }

    private void Focal()
    {
        if (_r.Focal is not { } focal) return;
        _page.Heading(_words.Focal);
        _page.Paragraph(_sentences.FocalLies(focal));
        Paragraphs(_sentences.FocalMore(focal));
    }

    private void LiningUp()
    {
        var report = _r.LiningUp;
        _page.Heading(_words.LiningUp);
        _page.Paragraph(_language.Terms.LiningUp[report.Word]);
        Paragraphs(_sentences.LiningUpMore());
        if (report.Pairs.IsEmpty)
        {
            _page.Paragraph(_words.NoPairs);
            return;
        }
        _page.Paragraph(_words.PairsAre);
        _page.Table([(_words.PairWhat, false), (_words.PairTurns, false), (_words.PairWhere, false), (_words.PairOff, false), (_words.PairAlong, true)],
            report.Pairs.Take(PairsShown).Select(p => new[]
            {
                report.GroupsAreRuns ? _names.LetterOf(p.Name) : p.Name,
                _language.Fill(_words.PairTurnAndNext, ("turn", p.TurnA), ("next", p.TurnB)),
                _language.Place(p.AngleDeg),
                Math.Abs(p.OffSquareMm) < SquareWithinMm ? _words.PairSquare : _language.Length(Math.Abs(p.OffSquareMm)),
                _language.Fill("{mm:mm}", ("mm", p.OverlapMm)),
            }), 0, 2);
        if (report.Pairs.Length > PairsShown)
            _page.Paragraph(_language.Fill(_words.PairsMore, ("more", report.Pairs.Length - PairsShown)), 2);
    }

    private void Wire()
    {
        var wire = _r.Wire;
        _page.Heading(_words.Wire);
        _page.Table([("", false), ("", true), ("", false)],
        [
            [_words.Cut, _language.LengthUp(wire.CutMm), _language.Fill(_words.Loops, ("loops", wire.LoopsToCut))],
            ["", _language.Length(wire.BeadedMm), _words.UnderBeads],
            ["", _language.Length(wire.EndsMm), _words.InEnds],
            ["", _language.Length(wire.GripMm), _words.ForPliers],
            ["", _language.Length(wire.SpareMm), _words.Spare],
        ], 2);
        Paragraphs(_sentences.TrimAndLeftOver());
    }

    private void Holes()
    {
        _page.Heading(_words.Holes);
        _page.Table([("", false), ("", false), ("", false)], _r.Counts.Zip(_r.Passing).Select(k => new[]
        {
            k.First.Letter, k.First.Bead.Name,
            _language.Fill(_language.Terms.Passing[k.Second.Passes], ("clearanceMm", k.Second.ClearanceMm), ("longestMm", k.Second.LongestMm),
                ("neededBoreMm", k.Second.NeededBoreMm)),
        }), 1);
    }

    private void Weight()
    {
        _page.Heading(_words.Weight);
        _page.Paragraph(_sentences.Weight());
        Paragraphs(_sentences.WeightMore());
    }

    private void Cautions()
    {
        var cautions = _language.Cautions;
        _page.Heading(_words.Cautions);
        foreach (var caution in cautions.OfMemoryWire.Append(cautions.SmallParts).Append(cautions.Metals)) _page.Hanging("* ", caution);
    }

    private void Details()
    {
        _page.Heading(_words.Details);
        Paragraphs(_sentences.Details());
    }

    private void Wrists()
    {
        _page.Heading(_words.OtherWrists);
        var step = Math.Max(1, (_r.Curve.Length + WristsShown - 1) / WristsShown);
        _page.Table([(_words.Wrist, true), (_words.Turns, true), (_words.OverOwnKind, true), ("", false)],
            _r.Curve.Where((_, i) => i % step == 0).Select(p => new[]
            {
                _language.Length(p.WristMm), _language.Number(p.TurnsWorn, 2),
                p.Cover is { } cover ? _language.Fill("{cover:percent}", ("cover", cover)) : "-",
                p.FailsWish ? _words.FailsWish : "",
            }), 3);
    }

    private string Across(double widthMm, double thicknessMm) => widthMm == thicknessMm
        ? Mm(widthMm)
        : $"{_language.Number(widthMm, 2)} x {Mm(thicknessMm)}";

    private string Mm(double mm) => $"{_language.Number(mm, 2)} {_language.Terms.Mm}";

    private static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);
}
