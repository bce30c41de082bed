using System.Collections.Immutable;
using Coilwright.Core.Making;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Classes;

/// <summary>One step of a class: a step of the pattern, or one of the maker's timed steps that is none of those.</summary>
/// <param name="Step">The step of the pattern; null for another.</param>
/// <param name="Timed">The timed step that is no step of the pattern; null for one that is.</param>
/// <param name="OwnMinutes">How long the maker takes for it, minutes; null when that was told nowhere.</param>
/// <param name="Turns">How many take turns at its tools, one after the other, 1 or more.</param>
/// <param name="WaitMinutes">How long what was done is left alone afterwards, minutes; 0 for not at all.</param>
public sealed record ClassWork(PatternStep? Step, TimedStep? Timed, decimal? OwnMinutes, int Turns, decimal WaitMinutes)
{
    /// <summary>By this it is called when it is done beforehand: <c>cutWire</c> and <c>firstEnd</c>, and the name of a timed step.</summary>
    public string Key => Step?.Action switch
    {
        null => Timed!.Name,
        StepAction.CutWire => "cutWire",
        StepAction.FirstEnd => "firstEnd",
        _ => "",
    };

    /// <summary>Whether it comes before the first bead, and so needs no participant.</summary>
    public bool CanBeBeforehand { get; init; }

    /// <summary>How long the group takes for it, minutes, those taking turns one after the other; null when it was not timed.</summary>
    /// <param name="factor">How many times as long as the maker a learner takes.</param>
    public decimal? GroupMinutes(decimal factor) => OwnMinutes * factor * Turns;

    /// <summary>Every step of a piece in its order, with what is known of its time.</summary>
    /// <remarks>
    /// <para>A timed step that does several steps of the pattern is shared evenly by them; the time for stringing is shared by the steps that string, bead by bead. A step timed once for a batch tells
    /// nothing of one piece made by hand, and gives no time.</para>
    /// <para>A timed step of pieces that is no step of the pattern stands where the maker wrote it: after the last one before it in her list that is one, else at the beginning. One that is also
    /// done for kits is done when they are packed, and is no step of the class.</para>
    /// </remarks>
    /// <param name="reckoned">The readings of the piece.</param>
    /// <param name="sheet">The maker's timed steps.</param>
    /// <param name="ask">The class.</param>
    public static ImmutableArray<ClassWork> Of(Reckoned reckoned, CostSheet sheet, ClassAsk ask)
    {
        var pattern = PatternSteps.Of(reckoned);
        TimedStep[] timed = [.. sheet.Steps.Where(s => s.For.Contains(Sold.Piece) && !s.PerBatch)];
        var works = new List<ClassWork>(pattern.Select(OfPattern));
        var (at, inserted) = (0, new List<(int At, ClassWork Work)>());
        foreach (var step in timed)
            if (!step.Does.IsEmpty) at = pattern.Where(p => step.Does.Contains(p.Action)).Max(p => p.Number);
            else if (!step.For.Contains(Sold.Kit)) inserted.Add((at, new ClassWork(null, step, step.Minutes, 1, step.WaitMinutes ?? 0)));
        foreach (var (place, work) in inserted.AsEnumerable().Reverse()) works.Insert(place, work);
        var first = works.FindIndex(w => w.Step?.Action == StepAction.StringBeads);
        return [.. works.Select((w, n) => w with { CanBeBeforehand = n < first })];

        ClassWork OfPattern(PatternStep step)
        {
            var (ends, strings) = (reckoned.Piece.Ends, step.Action == StepAction.StringBeads);
            TimedStep[] its = [.. timed.Where(s => s.Does.Contains(step.Action))];
            decimal? minutes = ask.Minutes.TryGetValue(step.Action, out var told) ? told : its.Length == 0 ? null : its.Sum(s => s.Minutes / s.Does.Length);
            if (strings) minutes = minutes * step.Strung!.Beads / reckoned.Piece.Order.Count;
            var turns = StepTools.Of(step.Action, ends).Select(t => ask.Shared.GetValueOrDefault(t, 1)).DefaultIfEmpty(1).Max();
            var isLast = !strings || step.BeadsSoFar == reckoned.Piece.Order.Count;
            return new ClassWork(step, null, minutes, Math.Min(turns, ask.Participants), isLast ? its.Max(s => s.WaitMinutes) ?? 0 : 0);
        }
    }
}
