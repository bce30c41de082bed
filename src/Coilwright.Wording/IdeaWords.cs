namespace Coilwright.Wording;

/// <summary>Words of better orders. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record IdeaWords
{
    /// <summary>Heading over all ideas.</summary>
    public required string Heading { get; init; }

    /// <summary>How the piece does now: {against}, {wrists} for how many wrists.</summary>
    public required string Now { get; init; }

    /// <summary>How nineteen in twenty such pieces do now: {against}, {wrists} for how many wrists.</summary>
    public required string NowNineteen { get; init; }

    /// <summary>Counts were looked for by steps, for nineteen in twenty, and there is no bound.</summary>
    public required string PerhapsBetterNineteen { get; init; }

    /// <summary>Orders of groups were looked through by the mean, and what is judged is nineteen in twenty.</summary>
    public required string PerhapsAnotherNineteen { get; init; }

    /// <summary>The wish fails now on {wrists}.</summary>
    public required string NowFails { get; init; }

    /// <summary>The wish holds now on every wrist.</summary>
    public required string NowHolds { get; init; }

    /// <summary>Heading of the smallest cure.</summary>
    public required string SmallestCure { get; init; }

    /// <summary>Heading of the best with a few beads.</summary>
    public required string FewBeads { get; init; }

    /// <summary>Heading of the best of all.</summary>
    public required string Best { get; init; }

    /// <summary>More beads in a run: {by}, {bead}, {where}, {to}.</summary>
    public required string More { get; init; }

    /// <summary>Fewer beads in a run: {by}, {bead}, {where}, {to}.</summary>
    public required string Fewer { get; init; }

    /// <summary>Where a run is: {before}, {after} for the groups on either side, each possibly missing; {first}, {last} for its beads, or {one} for its only one.</summary>
    public required string Where { get; init; }

    /// <summary>What it brings: {before}, {after} for what lies against the wish.</summary>
    public required string Brings { get; init; }

    /// <summary>It holds on every wrist looked at.</summary>
    public required string Holds { get; init; }

    /// <summary>It fails on {wrists}.</summary>
    public required string Fails { get; init; }

    /// <summary>The beads take more wire: {mm}.</summary>
    public required string Longer { get; init; }

    /// <summary>The beads take less wire: {mm}.</summary>
    public required string Shorter { get; init; }

    /// <summary>The beads take as much wire as before.</summary>
    public required string SameLength { get; init; }

    /// <summary>Loops of wire to cut: {before}, {after}.</summary>
    public required string Cut { get; init; }

    /// <summary>Where the focal comes to lie: {angleDeg}, {turn}.</summary>
    public required string Focal { get; init; }

    /// <summary>Every smaller change was tried.</summary>
    public required string NoSmaller { get; init; }

    /// <summary>Not every smaller change was tried.</summary>
    public required string PerhapsSmaller { get; init; }

    /// <summary>Nothing better is allowed, by the tables.</summary>
    public required string NoBetter { get; init; }

    /// <summary>Not every change of as few beads was looked at.</summary>
    public required string PerhapsAnother { get; init; }

    /// <summary>No change of as few beads does better, by the tables.</summary>
    public required string NoBetterFew { get; init; }

    /// <summary>The best there is may be better by {gap}.</summary>
    public required string PerhapsBetter { get; init; }

    /// <summary>How many ways there are: {gaps}, {ways}.</summary>
    public required string Ways { get; init; }

    /// <summary>Caption of what changes of so many beads can do at best.</summary>
    public required string Front { get; init; }

    /// <summary>Head of the column of beads put in and taken out.</summary>
    public required string FrontBeads { get; init; }

    /// <summary>Head of the column of what then lies against the wish.</summary>
    public required string FrontLoss { get; init; }

    /// <summary>No bead changed.</summary>
    public required string FrontNone { get; init; }

    /// <summary>Any number of beads changed.</summary>
    public required string FrontAny { get; init; }

    /// <summary>The least that is known of: {loss}, {bound}.</summary>
    public required string FrontBound { get; init; }

    /// <summary>The search was stopped.</summary>
    public required string Stopped { get; init; }

    /// <summary>No wish.</summary>
    public required string NoWish { get; init; }

    /// <summary>No gap.</summary>
    public required string NoGap { get; init; }

    /// <summary>Nothing allowed: {rules}.</summary>
    public required string NoneAllowed { get; init; }

    /// <summary>As it is worn nothing else is allowed, only worn otherwise: {rules}.</summary>
    public required string OnlyOtherwise { get; init; }

    /// <summary>The rule of the length.</summary>
    public required string RuleLength { get; init; }

    /// <summary>The rule of beads to hand: {bead}.</summary>
    public required string RuleOnHand { get; init; }

    /// <summary>Joins rules and wrists.</summary>
    public required string And { get; init; }

    /// <summary>Nothing better was found.</summary>
    public required string NoneBetter { get; init; }

    /// <summary>The better order was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>There was nothing to write to {file}.</summary>
    public required string NotWritten { get; init; }

    /// <summary>Heading of two groups that change places.</summary>
    public required string OneSwap { get; init; }

    /// <summary>Heading of a bead that stands in for another.</summary>
    public required string StandIn { get; init; }

    /// <summary>Heading of the best with groups and beads free.</summary>
    public required string OtherOrder { get; init; }

    /// <summary>Two rows change places: {one}, {other}.</summary>
    public required string ChangePlaces { get; init; }

    /// <summary>A group or beads, and where: {name}; {place}, counted among groups, where it is one; {first}, {last} for its beads, or {one} for its only one.</summary>
    public required string Row { get; init; }

    /// <summary>A bead stands in for another in a row: {bead}, {with}, {row}.</summary>
    public required string Instead { get; init; }

    /// <summary>A bead stands in for another everywhere: {bead}, {with}, {beads} for how many.</summary>
    public required string InsteadEverywhere { get; init; }

    /// <summary>Every pair was judged.</summary>
    public required string NoBetterSwap { get; init; }

    /// <summary>Not every pair was judged.</summary>
    public required string PerhapsAnotherSwap { get; init; }

    /// <summary>Every bead that may stand in was judged.</summary>
    public required string NoBetterStandIn { get; init; }

    /// <summary>Every order of the groups was gone through with the runs as they are.</summary>
    public required string NoBetterOrder { get; init; }

    /// <summary>Not every order was gone through.</summary>
    public required string PerhapsAnotherOrder { get; init; }

    /// <summary>How many orders of groups there are: {groups}, {ways}.</summary>
    public required string GroupWays { get; init; }

    /// <summary>No allowed order was found, and why is not known.</summary>
    public required string NoneFound { get; init; }

    /// <summary>One rule cannot be kept: {rule}.</summary>
    public required string OneNotKept { get; init; }

    /// <summary>The rule of the focal on the top: {withinDeg}.</summary>
    public required string RuleFocal { get; init; }

    /// <summary>The rule of the longest run: {name}, {most}.</summary>
    public required string RuleRun { get; init; }

    /// <summary>The rule of what stands close together: {names}, {upTo}, {ofAny}.</summary>
    public required string RuleRow { get; init; }

    /// <summary>The rule of what stays apart: {name}, {beside}.</summary>
    public required string RuleApart { get; init; }

    /// <summary>The rule of what stays together: {name}, {beside}.</summary>
    public required string RuleTogether { get; init; }

    /// <summary>The rule of the beginning: {name}.</summary>
    public required string RuleStart { get; init; }

    /// <summary>The rule of the end: {name}.</summary>
    public required string RuleEnd { get; init; }

    /// <summary>Heading of another start.</summary>
    public required string OtherStart { get; init; }

    /// <summary>Heading of another coil.</summary>
    public required string OtherCoil { get; init; }

    /// <summary>The start moves the way the beads run: {by}, {angleDeg}.</summary>
    public required string StartOn { get; init; }

    /// <summary>The start moves against the way the beads run: {by}, {angleDeg}.</summary>
    public required string StartBack { get; init; }

    /// <summary>On a larger coil: {mm}, {how}.</summary>
    public required string LargerCoil { get; init; }

    /// <summary>On a smaller coil: {mm}, {how}.</summary>
    public required string SmallerCoil { get; init; }

    /// <summary>The size is an inside diameter.</summary>
    public required string CoilInside { get; init; }

    /// <summary>The size is a diameter on the wire's middle.</summary>
    public required string CoilCentre { get; init; }

    /// <summary>The size is a loop.</summary>
    public required string CoilLoop { get; init; }

    /// <summary>Every place of the grid was judged: {from}, {to}, {step}.</summary>
    public required string NoBetterStart { get; init; }

    /// <summary>Every coil was judged.</summary>
    public required string NoBetterCoil { get; init; }

    /// <summary>The rule of the turns: {least}, {most}.</summary>
    public required string RuleTurns { get; init; }
}
