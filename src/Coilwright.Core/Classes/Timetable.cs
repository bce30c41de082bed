using System.Collections.Immutable;

namespace Coilwright.Core.Classes;

/// <summary>What a stretch of a class is.</summary>
public enum StretchKind
{
    /// <summary>A step is worked at.</summary>
    Work,

    /// <summary>The group waits for what was done.</summary>
    Wait,

    /// <summary>A break.</summary>
    Break,
}

/// <summary>A stretch of a class, in minutes from its beginning.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Work">The step that is worked at or waited for; null for a break.</param>
/// <param name="From">When it begins.</param>
/// <param name="To">When it ends; the same as <paramref name="From"/> for a step that was not timed.</param>
public sealed record Stretch(StretchKind Kind, ClassWork? Work, decimal From, decimal To)
{
    /// <summary>Whether it goes on with a step that a break interrupted.</summary>
    public bool GoesOn { get; init; }

    /// <summary>Whether a step before it was not timed, so that it begins then at the earliest.</summary>
    public bool IsAtEarliest { get; init; }
}

/// <summary>A class by the clock: all do each step at the same time, and the next begins when the last one is done with it.</summary>
/// <remarks>A break interrupts a step. What must be left alone is left alone through a break too. A step that was not timed takes no time here, and all after it begins at the earliest when it is told to.</remarks>
/// <param name="Stretches">Its stretches, by when they begin.</param>
/// <param name="Minutes">When the last step is done, minutes from the beginning.</param>
public sealed record Timetable(ImmutableArray<Stretch> Stretches, decimal Minutes)
{
    /// <summary>Whether a step was not timed.</summary>
    public bool HasUntimed => Stretches.Any(s => s.Kind == StretchKind.Work && s.Work!.OwnMinutes is null);

    /// <summary>Minutes of breaks in it.</summary>
    public decimal BreakMinutes => Stretches.Where(s => s.Kind == StretchKind.Break).Sum(s => s.To - s.From);

    /// <summary>Minutes that the group waits for what was done, breaks in them among those.</summary>
    public decimal WaitMinutes => Stretches.Where(s => s.Kind == StretchKind.Wait).Sum(s => s.To - s.From);

    /// <summary>Lays the steps one after the other.</summary>
    /// <param name="works">The steps that the group does.</param>
    /// <param name="breaks">Breaks in minutes from the beginning, one after the other.</param>
    /// <param name="factor">How many times as long as the maker a learner takes.</param>
    public static Timetable Of(IReadOnlyList<ClassWork> works, IEnumerable<(decimal From, decimal To)> breaks, decimal factor)
    {
        var laid = ImmutableArray.CreateBuilder<Stretch>();
        var left = new Queue<(decimal From, decimal To)>(breaks);
        var (clock, earliest) = (0m, false);
        for (var w = 0; w < works.Count; w++)
        {
            Rest(clock);
            var work = works[w];
            if (work.GroupMinutes(factor) is not { } minutes)
            {
                laid.Add(new Stretch(StretchKind.Work, work, clock, clock) { IsAtEarliest = earliest });
                earliest = true;
                continue;
            }
            for (var goesOn = false; minutes > 0;)
            {
                var here = left.TryPeek(out var next) && next.From < clock + minutes ? next.From - clock : minutes;
                laid.Add(new Stretch(StretchKind.Work, work, clock, clock + here) { GoesOn = goesOn, IsAtEarliest = earliest });
                (clock, minutes, goesOn) = (clock + here, minutes - here, true);
                if (minutes > 0) Rest(clock);
            }
            if (work.WaitMinutes == 0 || w == works.Count - 1) continue;
            var until = clock + work.WaitMinutes;
            laid.Add(new Stretch(StretchKind.Wait, work, clock, until) { IsAtEarliest = earliest });
            while (left.TryPeek(out var next) && next.From < until)
            {
                laid.Add(new Stretch(StretchKind.Break, null, next.From, next.To));
                clock = left.Dequeue().To;
            }
            clock = Math.Max(clock, until);
        }
        return new Timetable(laid.ToImmutable(), clock);

        void Rest(decimal from)
        {
            while (left.TryPeek(out var next) && next.From <= from)
            {
                laid.Add(new Stretch(StretchKind.Break, null, next.From, next.To));
                from = clock = Math.Max(from, left.Dequeue().To);
            }
        }
    }
}
