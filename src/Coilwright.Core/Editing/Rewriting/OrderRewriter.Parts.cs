using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

internal sealed partial class OrderRewriter
{
    /// <summary>Changes a part in place, or gives what stands instead of it.</summary>
    private List<Phrase>? Rewrite(OrderPart part, Mark[] marks)
    {
        if (marks.Length == 0 && _writing == 0 && !_groups.Touched.Contains(part)) return null;
        switch (part)
        {
            case OrderNameUse use when _map.Lengths.KindOf(use) is var kind and >= 0:
                return marks is [{ Doing: Becoming becoming }] ? Phrases(becoming, kind) : null;
            case OrderNameUse use:
                return RewriteUse(use, _groups.VersionOf(use.Name.Text, marks));
            case OrderBracket { Name: not null } bracket:
                return RewriteNamed(bracket, _groups.VersionOf(bracket.Name.Text, marks));
            case OrderBracket bracket:
                Rewrite(bracket.Run.Items, marks);
                return null;
            case OrderBackwards backwards:
                return RewriteBackwards(backwards, Marks.Turned(marks, _map.Lengths.Of(backwards.Part)));
            case OrderMirror mirror:
                return RewriteMirror(mirror, MirrorCut.Of(mirror, _map.Lengths, marks));
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    // Groups -------------------------------------------------------------------------------------------------------------------------------

    private List<Phrase>? RewriteUse(OrderNameUse use, GroupVersion version)
    {
        if (version.IsUngrouped) return [new Phrase(BodyOf(version), PhraseForm.NameOrBracket)];
        if (WritesDown(version, atBracket: false)) Change(use.Span, $"{version.Name} {BodyOf(version)}");
        else if (version.Name != use.Name.Text) Change(use.Span, version.Name);
        return null;
    }

    private List<Phrase>? RewriteNamed(OrderBracket bracket, GroupVersion version)
    {
        if (!version.IsUngrouped && !WritesDown(version, atBracket: true))
        {
            Change(bracket.Span, version.Name);
            return null;
        }
        if (version.IsUngrouped) Change(TextSpan.Between(bracket.Name!.Span.Start, _text.First(OrderTokenKind.Open, bracket.Name.Span.End).Span.Start), "");
        else if (version.Name != bracket.Name!.Text) Change(bracket.Name.Span, version.Name);
        Rewrite(bracket.Run.Items, version.Body);
        return null;
    }

    /// <summary>Whether a group is to be written down here, where it is strung, and not only named.</summary>
    private bool WritesDown(GroupVersion version, bool atBracket)
    {
        var hasItsPlace = version.Group.Bracket is null ? version == version.Group.Kept : version.IsAtBracket && !(atBracket && _elsewhere == 0);
        return !hasItsPlace && _writtenGroups.Add(version.Name);
    }

    /// <summary>What a version of a group strings, in a bracket.</summary>
    private string BodyOf(GroupVersion version)
    {
        var (_, run, bracket) = version.Group;
        // The whole bracket, for the comment after its last item.
        var span = bracket is null ? run.Span : TextSpan.Between(_text.First(OrderTokenKind.Open, bracket.Name!.Span.End).Span.Start, bracket.Span.End);
        // A group written down as one bracket does not get a second one.
        if (run.Items is [{ Times: 1, Separator: null, Part: OrderBracket { Name: null } only }] && _text.Comments(span).Count() == _text.Comments(only.Span).Count())
            (run, bracket, span) = (only.Run, only, only.Span);
        // Where the group is written down no more where it was, its comments come along.
        var stays = version.Group.IsBracketThere || (version != version.Group.Kept && version.Group.Kept is not null) ? 1 : 0;
        _commentsStay += stays;
        var changes = WriteOut(() =>
        {
            _elsewhere++;
            Rewrite(run.Items, version.Body);
            _elsewhere--;
        });
        var body = Tidy(run, span, changes, inBracket: bracket is null);
        _commentsStay -= stays;
        return body;
    }

    // Mirrors ------------------------------------------------------------------------------------------------------------------------------

    private List<Phrase>? RewriteBackwards(OrderBackwards backwards, Mark[] marks)
    {
        if (Rewrite(backwards.Part, marks) is not { } instead) return null;
        if (instead is [{ Form: PhraseForm.NameOrBracket } only])
        {
            Change(backwards.Part.Span, only.Text);
            return null;
        }
        return [new Phrase($"backwards ({Phrase.Join(instead)})", PhraseForm.Part)];
    }

    private List<Phrase>? RewriteMirror(OrderMirror mirror, MirrorCut cut)
    {
        var halfGoes = Marks.Empty(cut.Half, _map.Lengths.Of(mirror.Half));
        if (!cut.HalvesAreAlike || halfGoes) return MirrorWrittenOut(mirror, cut);
        Rewrite(mirror.Half.Items, cut.Half);
        if (mirror.Centre is null)
        {
            if (cut.Middle is not null) Change(mirror.Span.End, $" around {Phrase.As(Phrases(cut.Middle), PhraseForm.Counted).Text}");
        }
        else if ((cut.OfCentre is null ? Rewrite(mirror.Centre, cut.Centre, isInner: true) : CentreOf(mirror.Centre, cut)) is { } instead)
        {
            var close = _text.Last(OrderTokenKind.Close, AroundOf(mirror).Span.Start);
            if (instead.Count == 0) Change(TextSpan.Between(close.Span.End, mirror.Span.End), "");
            else Change(mirror.Centre.Span, Phrase.As(instead, PhraseForm.Counted).Text);
        }
        return null;
    }

    private List<Phrase> MirrorWrittenOut(OrderMirror mirror, MirrorCut cut)
    {
        var phrases = new List<Phrase>();
        if (HalfOf(mirror, cut.Half) is { } half) phrases.Add(new Phrase(half, PhraseForm.NameOrBracket));
        if (cut.Middle is not null) phrases.AddRange(Phrases(cut.Middle));
        if (mirror.Centre is { } centre && !Marks.Empty(cut.Centre, _map.Lengths.Of(centre))) phrases.AddRange(CentreOf(centre, cut));
        if (HalfOf(mirror, cut.OtherHalf) is { } other)
            phrases.Add(IsOneBead(mirror.Half, cut.OtherHalf) ? new Phrase(other, PhraseForm.NameOrBracket) : new Phrase("backwards " + other, PhraseForm.Part));
        return phrases;
    }

    /// <summary>A half of a mirror standing alone: its bracket, or the one bead in it; null when nothing of it is left.</summary>
    private string? HalfOf(OrderMirror mirror, Mark[] marks)
    {
        var half = mirror.Half;
        if (Marks.Empty(marks, _map.Lengths.Of(half))) return null;
        if (IsOneBead(half, marks)) return _map.Tree.TextOf(half.Span);
        var open = _text.Last(OrderTokenKind.Open, half.Span.Start).Span.Start;
        var bracket = TextSpan.Between(open, _text.First(OrderTokenKind.Close, half.Span.End).Span.End);
        var changes = WriteOut(() => Rewrite(half.Items, marks));
        return Tidy(half, bracket, changes);
    }

    private bool IsOneBead(OrderRun half, Mark[] marks) =>
        marks.Length == 0 && half.Items is [{ Count: null, Separator: null, Part: OrderNameUse use }] && _map.Lengths.KindOf(use) >= 0;

    private List<Phrase> CentreOf(OrderItem centre, MirrorCut cut)
    {
        var phrases = Phrases(centre, cut.Centre);
        return cut.OfCentre is null ? phrases : [Wrapped(phrases, cut.OfCentre)];
    }

    private OrderToken AroundOf(OrderMirror mirror) => _text.Last(OrderTokenKind.Around, mirror.Centre!.Span.Start);

    // Text that is written out -------------------------------------------------------------------------------------------------------------

    private List<Phrase> Phrases(OrderPart part, Mark[] marks)
    {
        List<Phrase>? instead = null;
        var changes = WriteOut(() => instead = Rewrite(part, marks));
        return instead ?? [new Phrase(Tidy(part, part.Span, changes), FormOf(part))];
    }

    private List<Phrase> Phrases(OrderItem item, Mark[] marks)
    {
        List<Phrase>? instead = null;
        var changes = WriteOut(() => instead = Rewrite(item, marks));
        if (instead is not null) return instead;
        var text = Tidy(item, item.Span, changes);
        // A count or what is between may have come or gone.
        var now = (OrderItem)OrderTree.Of(text).Entries.Single();
        return [new Phrase(text, now.Separator is not null ? PhraseForm.Item : now.Count is not null ? PhraseForm.Counted : FormOf(now.Part!))];
    }

    private static PhraseForm FormOf(OrderPart part) => part is OrderNameUse or OrderBracket ? PhraseForm.NameOrBracket : PhraseForm.Part;

    private List<TextChange> WriteOut(Action write)
    {
        var outside = _changes;
        _changes = [];
        _writing++;
        write();
        _writing--;
        var changes = _changes;
        _changes = outside;
        return changes;
    }

    /// <summary>A part's text as it is written out. Her comments and lines come along the first time; after that it is written plainly.</summary>
    private string Tidy(OrderNode node, TextSpan span, List<TextChange> changes, bool inBracket = false)
    {
        var mayTell = _commentsStay == 0;
        var isFirst = _writtenOut.Add(node) && mayTell;
        if (!_text.IsLoose(span)) return Bracketed(Sliced(span, changes));
        var comments = _text.Comments(span).Where(comment => !changes.Exists(change => change.Span.Start <= comment.Start && change.Span.End >= comment.End)).ToList();
        var told = mayTell ? comments.Where(comment => !_toldComments.Add(comment.Start)).ToList() : comments;
        var isPlain = (comments.Count == 0 ? !isFirst : told.Count == comments.Count) && !changes.Exists(change => change.With.Contains('#', StringComparison.Ordinal));
        if (!isPlain) return Bracketed(Sliced(span, [.. changes, .. told.Select(comment => new TextChange(comment, ""))]));
        return OrderPrinter.Print(OrderTree.Of(Bracketed(Sliced(span, changes)))).TrimEnd('\n');

        string Bracketed(string text) => inBracket ? $"({text})" : text;
    }

    private string Sliced(TextSpan span, List<TextChange> changes)
    {
        var sliced = new StringBuilder();
        var at = span.Start;
        foreach (var (changed, with) in InOrder(changes))
        {
            if (changed.End < span.Start || changed.Start > span.End) continue;
            sliced.Append(_map.Tree.Text.AsSpan(at, Math.Max(at, changed.Start) - at)).Append(with);
            at = Math.Max(at, Math.Min(changed.End, span.End));
        }
        return sliced.Append(_map.Tree.Text.AsSpan(at, span.End - at)).ToString();
    }

    /// <summary>Changes by place, those at one place as they came, insertions before what is replaced there; with a blank where two words would run
    /// into one.</summary>
    private List<TextChange> InOrder(List<TextChange> changes)
    {
        var text = _map.Tree.Text;
        var ordered = changes.OrderBy(change => change.Span.Start).ThenBy(change => change.Span.Length > 0).ToList();
        var last = '\0';
        for (var i = 0; i < ordered.Count; i++)
        {
            var (span, with) = ordered[i];
            if (span.Start > 0 && (i == 0 || ordered[i - 1].Span.End < span.Start)) last = text[span.Start - 1];
            if (with.Length > 0)
            {
                if (RunTogether(last, with[0], span, span.Start)) with = " " + with;
                last = with[^1];
            }
            var isLastHere = i + 1 == ordered.Count || ordered[i + 1].Span.Start > span.End;
            if (isLastHere && span.End < text.Length && RunTogether(last, text[span.End], span, span.End)) with += " ";
            ordered[i] = new TextChange(span, with);
        }
        return ordered;

        // Words that touched there before, as a count and its x, may go on touching.
        bool RunTogether(char before, char after, TextSpan span, int at) =>
            IsOfWord(before) && IsOfWord(after) && !(span.Length > 0 && at > 0 && at < text.Length && IsOfWord(text[at - 1]) && IsOfWord(text[at]));

        static bool IsOfWord(char c) => char.IsAsciiLetterOrDigit(c) || c == '-';
    }

    private void Change(TextSpan span, string with) => _changes.Add(new TextChange(span, with));

    private void Change(int place, string with) => _changes.Add(new TextChange(new TextSpan(place, 0), with));

    // Things that are put in ---------------------------------------------------------------------------------------------------------------

    private List<Phrase> Phrases(Inserting inserting) =>
        inserting.Times == 1 ? Phrases(inserting.Things) : [Phrase.Times(inserting.Times, Phrases(inserting.Things))];

    private List<Phrase> Phrases(Becoming becoming, int kind) =>
        Phrases(becoming.Stays ? [.. becoming.Before, new Thing.Bead(kind), .. becoming.After] : becoming.Before);

    /// <summary>Things as notation: like ones counted, and what stands between like ones said so.</summary>
    private List<Phrase> Phrases(ImmutableArray<Thing> things)
    {
        var rows = new List<(Thing Thing, int Count)>();
        foreach (var thing in things)
            if (rows.Count > 0 && AreAlike(rows[^1].Thing, thing)) rows[^1] = (thing, rows[^1].Count + 1);
            else rows.Add((thing, 1));
        var phrases = new List<Phrase>();
        for (var i = 0; i < rows.Count; i++)
        {
            var what = PhraseOf(rows[i].Thing);
            // From three on: "round, disc, round" reads better as it is.
            var between = 0;
            while (i + 2 * between + 2 < rows.Count && rows[i].Count == 1 && IsRow(rows[i + 2 * between + 2], rows[i]) && IsRow(rows[i + 2 * between + 1], rows[i + 1])) between++;
            if (between < 2)
            {
                phrases.Add(Counted(rows[i].Count, what));
                continue;
            }
            phrases.Add(new Phrase($"{Counted(between + 1, what).Text} with {Counted(rows[i + 1].Count, PhraseOf(rows[i + 1].Thing)).Text} between", PhraseForm.Item));
            i += 2 * between;
        }
        return phrases;

        static bool IsRow((Thing Thing, int Count) row, (Thing Thing, int Count) other) => row.Count == other.Count && AreAlike(row.Thing, other.Thing);

        static Phrase Counted(int count, Phrase what) =>
            count == 1 ? what : new Phrase(string.Create(CultureInfo.InvariantCulture, $"{count} {what.Text}"), PhraseForm.Counted);
    }

    private static bool AreAlike(Thing one, Thing other) => (one, other) switch
    {
        (Thing.Bead a, Thing.Bead b) => a.Kind == b.Kind,
        (Thing.Group a, Thing.Group b) => a.Name == b.Name && a.Backwards == b.Backwards,
        _ => false,
    };

    private Phrase PhraseOf(Thing thing)
    {
        if (thing is Thing.Bead bead) return new Phrase(_beadIds[bead.Kind], PhraseForm.NameOrBracket);
        var group = (Thing.Group)thing;
        string text;
        if (_groups.Find(group.Name) is null)
        {
            text = _writtenGroups.Add(group.Name) ? $"{group.Name} ({Phrase.Join(Phrases(group.Backwards ? Things.Reversed(group.Of) : group.Of))})" : group.Name;
        }
        else
        {
            var version = _groups.VersionOf(group.Name, []);
            text = WritesDown(version, atBracket: false) ? $"{version.Name} {BodyOf(version)}" : version.Name;
        }
        return group.Backwards && !Things.IsSameFromBothEnds(group.Of) ? new Phrase("backwards " + text, PhraseForm.Part) : new Phrase(text, PhraseForm.NameOrBracket);
    }
}
