using System.Collections.Immutable;
using Coilwright.Core.Kits;
using Coilwright.Core.Making;
using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Classes;

/// <summary>A break of a class.</summary>
/// <param name="At">When it begins.</param>
/// <param name="Minutes">How long it is, 1 to <see cref="ClassAsk.MostMinutes"/>.</param>
public sealed record ClassBreak(TimeOnly At, int Minutes);

/// <summary>What class is to be held, as the maker says it.</summary>
/// <remarks>Of times nothing is guessed: what is told neither here nor in the costs stays untold.</remarks>
public sealed record ClassAsk
{
    /// <summary>Most participants that are planned for, most spare kits, and most that share one tool.</summary>
    public const int MostParticipants = 200;

    /// <summary>Most minutes of anything: a day.</summary>
    public const int MostMinutes = 1440;

    /// <summary>Most times as long as the maker that a learner is planned to take.</summary>
    public const decimal MostFactor = 20;

    /// <summary>How many take part, 1 to <see cref="MostParticipants"/>.</summary>
    public required int Participants { get; init; }

    /// <summary>Kits beside theirs: to show with, and for mishaps; 0 to <see cref="MostParticipants"/>.</summary>
    public int SpareKits { get; init; }

    /// <summary>How many times as long as the maker a learner takes, 1 to <see cref="MostFactor"/>; null when nobody said, and then her own times count.</summary>
    public decimal? Factor { get; init; }

    /// <summary>When it begins; null when no clock is asked for.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>When it ends, after <see cref="Start"/> on the same day; null when nobody said.</summary>
    public TimeOnly? End { get; init; }

    /// <summary>Its breaks.</summary>
    public ImmutableArray<ClassBreak> Breaks { get; init; } = [];

    /// <summary>How many can sit and work in the room; null when nobody said.</summary>
    public int? Places { get; init; }

    /// <summary>How many share one of a tool, 2 or more; each has one of what is not listed. Eye protection is never shared.</summary>
    public ImmutableSortedDictionary<BenchTool, int> Shared { get; init; } = ImmutableSortedDictionary<BenchTool, int>.Empty;

    /// <summary>The maker's own minutes for steps of the pattern, above 0; they stand in place of those of the costs.</summary>
    public ImmutableSortedDictionary<StepAction, decimal> Minutes { get; init; } = ImmutableSortedDictionary<StepAction, decimal>.Empty;

    /// <summary>Steps that the maker does beforehand, by <see cref="ClassWork.Key"/>.</summary>
    public ImmutableArray<string> Beforehand { get; init; } = [];

    /// <summary>The maker's minutes to set up and clear away, 0 or more: paid, not taught.</summary>
    public decimal AroundMinutes { get; init; }

    /// <summary>What the room and all else that is paid once costs, 0 or more.</summary>
    public decimal Room { get; init; }

    /// <summary>The rule that prices a place; null for the first one that sells kits.</summary>
    public string? Rule { get; init; }
}

/// <summary>What a class is reckoned from.</summary>
public sealed record ClassSources
{
    /// <summary>What is at home; null when nobody said.</summary>
    public HomeStock? Home { get; init; }

    /// <summary>Beads beside those that are strung.</summary>
    public Spares Spares { get; init; } = Spares.None;

    /// <summary>Who sells what, for how much.</summary>
    public PriceList Prices { get; init; } = PriceList.Empty;

    /// <summary>Costs, timed steps and rules.</summary>
    public Costs Costs { get; init; } = Costs.Empty;

    /// <summary>What beads in stock cost; null where beads are priced as they are bought.</summary>
    public LotCosts? Lots { get; init; }
}
