using System.Collections.Frozen;
using Coilwright.Core.Making;

namespace Coilwright.Wording;

/// <summary>Words of a class on a piece. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record ClassWords
{
    /// <summary>What <c>class</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--participants</c>.</summary>
    public required string ParticipantsOption { get; init; }

    /// <summary><c>--spare-kits</c>.</summary>
    public required string SpareKitsOption { get; init; }

    /// <summary><c>--factor</c>.</summary>
    public required string FactorOption { get; init; }

    /// <summary><c>--start</c>.</summary>
    public required string StartOption { get; init; }

    /// <summary><c>--end</c>.</summary>
    public required string EndOption { get; init; }

    /// <summary><c>--break</c>.</summary>
    public required string BreakOption { get; init; }

    /// <summary><c>--places</c>.</summary>
    public required string PlacesOption { get; init; }

    /// <summary><c>--share</c>: {known}.</summary>
    public required string ShareOption { get; init; }

    /// <summary><c>--minutes</c>: {known}.</summary>
    public required string MinutesOption { get; init; }

    /// <summary><c>--beforehand</c>.</summary>
    public required string BeforehandOption { get; init; }

    /// <summary><c>--around</c>.</summary>
    public required string AroundOption { get; init; }

    /// <summary><c>--room</c>.</summary>
    public required string RoomOption { get; init; }

    /// <summary><c>--rule</c>.</summary>
    public required string RuleOption { get; init; }

    /// <summary><c>--lots</c>.</summary>
    public required string LotsOption { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary>Title of the teacher's sheet: {name}.</summary>
    public required string Title { get; init; }

    /// <summary>How many take part and how many kits are packed beside theirs: {participants}, {spare}.</summary>
    public required string Takers { get; init; }

    /// <summary>From {start} to {end}, or without an end, {open}.</summary>
    public required string Hours { get; init; }

    /// <summary>Heading of what stands against it.</summary>
    public required string ReasonsHeading { get; init; }

    /// <summary>Nothing stands against it.</summary>
    public required string CanBeHeld { get; init; }

    /// <summary>The report says stop: {notices}.</summary>
    public required string SaysStop { get; init; }

    /// <summary>{participants} take part, there are {places} places.</summary>
    public required string TooFewPlaces { get; init; }

    /// <summary>By how much it is too long: {over} of {available}, and why: {wait}, {turns}, {breaks}; what is not done: {steps}.</summary>
    public required string TooLong { get; init; }

    /// <summary>With {steps} done beforehand too it takes {minutes}; {fits}, or {over} too long still.</summary>
    public required string Shortens { get; init; }

    /// <summary>What could be done beforehand too, where no time of it is known: {steps}.</summary>
    public required string Could { get; init; }

    /// <summary>{missing} of {bead} cannot be had.</summary>
    public required string CannotBeHad { get; init; }

    /// <summary>No order can be sent.</summary>
    public required string NoOrderCanBeSent { get; init; }

    /// <summary>{rule} loses {loss} on each place; from {least} on nothing is lost.</summary>
    public required string Loses { get; init; }

    /// <summary>Steps without a time: {steps}.</summary>
    public required string NotTimed { get; init; }

    /// <summary>Timed steps that are no steps of the pattern: {steps}.</summary>
    public required string StepsNotNamed { get; init; }

    /// <summary>Steps timed once for a batch: {steps}.</summary>
    public required string OnceForBatch { get; init; }

    /// <summary>How long glue sets is not told.</summary>
    public required string GlueNotTold { get; init; }

    /// <summary>The learner's factor is not told.</summary>
    public required string FactorNotTold { get; init; }

    /// <summary>Some take turns: {steps}, {minutes} in all.</summary>
    public required string TakeTurns { get; init; }

    /// <summary>The end is not told.</summary>
    public required string EndNotTold { get; init; }

    /// <summary>No rule sells kits.</summary>
    public required string NoRule { get; init; }

    /// <summary>No wage is told.</summary>
    public required string NoWage { get; init; }

    /// <summary>{count} kinds have no price: {names}.</summary>
    public required string Unpriced { get; init; }

    /// <summary>Heading of the kits.</summary>
    public required string KitsHeading { get; init; }

    /// <summary>{kits} kits of {beads} beads, {spare} spare beads in each.</summary>
    public required string Kits { get; init; }

    /// <summary>{count} of {bead} are laid aside for all.</summary>
    public required string Aside { get; init; }

    /// <summary>Column of how many in one kit.</summary>
    public required string EachColumn { get; init; }

    /// <summary>Column of how many in all.</summary>
    public required string AllColumn { get; init; }

    /// <summary>Column of how many are bought.</summary>
    public required string BuyColumn { get; init; }

    /// <summary>Buying what is missing costs {total}.</summary>
    public required string Buying { get; init; }

    /// <summary>Where a bead lies: {bead}, {drawers}.</summary>
    public required string Drawers { get; init; }

    /// <summary>Heading of the tools.</summary>
    public required string ToolsHeading { get; init; }

    /// <summary>Column of tools.</summary>
    public required string ToolColumn { get; init; }

    /// <summary>Column of how many share one.</summary>
    public required string ShareColumn { get; init; }

    /// <summary>Column of how many tools.</summary>
    public required string ToolsColumn { get; init; }

    /// <summary>One of each for the teacher.</summary>
    public required string ToolsNote { get; init; }

    /// <summary>Heading of the timetable.</summary>
    public required string TimetableHeading { get; init; }

    /// <summary>Column of times.</summary>
    public required string TimeColumn { get; init; }

    /// <summary>Column of minutes.</summary>
    public required string MinutesColumn { get; init; }

    /// <summary>Column of steps.</summary>
    public required string StepColumn { get; init; }

    /// <summary>A time that may be later: {time}.</summary>
    public required string AtEarliest { get; init; }

    /// <summary>A step without a time.</summary>
    public required string NotTimedCell { get; init; }

    /// <summary>A step that goes on after a break: {step}.</summary>
    public required string GoesOn { get; init; }

    /// <summary>The group waits after {step}.</summary>
    public required string Wait { get; init; }

    /// <summary>A break.</summary>
    public required string Break { get; init; }

    /// <summary>A step at which {turns} take turns: {step}.</summary>
    public required string InTurns { get; init; }

    /// <summary>How long all of it takes: {minutes}, of which {breaks} are breaks; {least} where a step was not timed.</summary>
    public required string Takes { get; init; }

    /// <summary>No step was timed.</summary>
    public required string TakesUnknown { get; init; }

    /// <summary>How the time of a step is shared.</summary>
    public required string Evenly { get; init; }

    /// <summary>Heading of what is done beforehand.</summary>
    public required string BeforehandHeading { get; init; }

    /// <summary>A step done beforehand: {step}, {minutes} for {kits} kits; {untimed} where it was not timed.</summary>
    public required string Done { get; init; }

    /// <summary>Nothing is done beforehand.</summary>
    public required string NothingBeforehand { get; init; }

    /// <summary>Heading of what it costs.</summary>
    public required string CostHeading { get; init; }

    /// <summary>{kits} kits at {each}: {total}.</summary>
    public required string CostKits { get; init; }

    /// <summary>Teaching {minutes}.</summary>
    public required string CostTeaching { get; init; }

    /// <summary>It is not known how long she teaches.</summary>
    public required string CostTeachingUnknown { get; init; }

    /// <summary>Setting up {minutes}.</summary>
    public required string CostAround { get; init; }

    /// <summary>Done beforehand {minutes}.</summary>
    public required string CostBeforehand { get; init; }

    /// <summary>The room.</summary>
    public required string CostRoom { get; init; }

    /// <summary>All of it.</summary>
    public required string CostTotal { get; init; }

    /// <summary>For each of {participants}.</summary>
    public required string CostEach { get; init; }

    /// <summary>Heading of the price.</summary>
    public required string PriceHeading { get; init; }

    /// <summary>There is no price, since it is not known how long she teaches.</summary>
    public required string PriceUnknown { get; init; }

    /// <summary>What a place and all places leave: {each}, {all}, {hour} an hour.</summary>
    public required string Leaves { get; init; }

    /// <summary>From {count} on it pays for itself at {price}.</summary>
    public required string BreakEven { get; init; }

    /// <summary>No number that is planned for pays for it: {most}, {price}.</summary>
    public required string NeverEven { get; init; }

    /// <summary>Title of a participant's sheet: {name}.</summary>
    public required string SheetTitle { get; init; }

    /// <summary>How it is used.</summary>
    public required string SheetLead { get; init; }

    /// <summary>Heading of what lies in the kit.</summary>
    public required string SheetKit { get; init; }

    /// <summary>Heading of the tools.</summary>
    public required string SheetTools { get; init; }

    /// <summary>A tool that several share: {tool}, {share}.</summary>
    public required string SheetShared { get; init; }

    /// <summary>The wire: {loops} loops, {cutMm}.</summary>
    public required string SheetWire { get; init; }

    /// <summary>Already done: {step}.</summary>
    public required string SheetDone { get; init; }

    /// <summary>A file was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>Tools by their kind.</summary>
    public required FrozenDictionary<BenchTool, string> Tools { get; init; }

    /// <summary>Steps of the pattern in a word, for lists.</summary>
    public required FrozenDictionary<StepAction, string> Actions { get; init; }
}
