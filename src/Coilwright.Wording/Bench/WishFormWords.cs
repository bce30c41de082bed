namespace Coilwright.Wording;

/// <summary>What a maker wants of a better order, set by hand: what may change and what must hold. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record WishFormWords
{
    /// <summary>Heading of what may change.</summary>
    public required string MayChange { get; init; }

    /// <summary>What that is.</summary>
    public required string MayChangeLead { get; init; }

    /// <summary>Heading of what must hold.</summary>
    public required string MustHold { get; init; }

    /// <summary>What that is.</summary>
    public required string MustHoldLead { get; init; }

    /// <summary>Nothing is said of a part.</summary>
    public required string AsUsual { get; init; }

    /// <summary>Nothing is said of a part, and then there is nothing of it.</summary>
    public required string Nothing { get; init; }

    /// <summary>A part is not limited.</summary>
    public required string NoLimit { get; init; }

    /// <summary>Takes something out again.</summary>
    public required string TakeOut { get; init; }

    /// <summary>Takes down what was typed.</summary>
    public required string Say { get; init; }

    /// <summary>Adds what was chosen.</summary>
    public required string Add { get; init; }

    /// <summary>A bead to choose.</summary>
    public required string Bead { get; init; }

    /// <summary>The fewest.</summary>
    public required string Fewest { get; init; }

    /// <summary>The most.</summary>
    public required string Most { get; init; }

    /// <summary>From {least} to {most}.</summary>
    public required string Range { get; init; }

    /// <summary>Something said of a bead or group: {name}, {said}.</summary>
    public required string Said { get; init; }

    /// <summary>Part: runs of spacers and connectors.</summary>
    public required string Runs { get; init; }

    /// <summary>What it is for: {reach} for how many by themselves.</summary>
    public required string RunsHint { get; init; }

    /// <summary>No bead has the role.</summary>
    public required string RunsNone { get; init; }

    /// <summary>Part: the length.</summary>
    public required string Length { get; init; }

    /// <summary>What it is for: {mm} for what it is by itself.</summary>
    public required string LengthHint { get; init; }

    /// <summary>The length to type.</summary>
    public required string LengthBy { get; init; }

    /// <summary>Part: the turns.</summary>
    public required string Turns { get; init; }

    /// <summary>What it is for.</summary>
    public required string TurnsHint { get; init; }

    /// <summary>Part: the starting end.</summary>
    public required string Start { get; init; }

    /// <summary>What it is for.</summary>
    public required string StartHint { get; init; }

    /// <summary>The focal decides.</summary>
    public required string StartFocal { get; init; }

    /// <summary>First degrees.</summary>
    public required string FromDeg { get; init; }

    /// <summary>Last degrees.</summary>
    public required string ToDeg { get; init; }

    /// <summary>Step in degrees.</summary>
    public required string StepDeg { get; init; }

    /// <summary>What is said: {from}, {to}, {step}.</summary>
    public required string StartSaid { get; init; }

    /// <summary>Part: groups.</summary>
    public required string Groups { get; init; }

    /// <summary>Groups may change places.</summary>
    public required string GroupOrder { get; init; }

    /// <summary>Halves stay equal.</summary>
    public required string MirroredHalves { get; init; }

    /// <summary>Part: beads that stand in.</summary>
    public required string StandIns { get; init; }

    /// <summary>What it is for.</summary>
    public required string StandInsHint { get; init; }

    /// <summary>The bead that goes.</summary>
    public required string Goes { get; init; }

    /// <summary>The bead that comes.</summary>
    public required string Comes { get; init; }

    /// <summary>Everywhere at once.</summary>
    public required string Everywhere { get; init; }

    /// <summary>What is said: {bead}, {with}, {everywhere} for whether everywhere.</summary>
    public required string StandInSaid { get; init; }

    /// <summary>Part: coils.</summary>
    public required string Coils { get; init; }

    /// <summary>What it is for.</summary>
    public required string CoilsHint { get; init; }

    /// <summary>What is said: {mm}, {how}.</summary>
    public required string CoilSaid { get; init; }

    /// <summary>Part: wishes by group.</summary>
    public required string ByGroup { get; init; }

    /// <summary>What it is for.</summary>
    public required string ByGroupHint { get; init; }

    /// <summary>A group to choose.</summary>
    public required string Group { get; init; }

    /// <summary>Part: wishes for places.</summary>
    public required string ByPlace { get; init; }

    /// <summary>What it is for.</summary>
    public required string ByPlaceHint { get; init; }

    /// <summary>What is said: {from}, {to}, {wish}.</summary>
    public required string PlaceSaid { get; init; }

    /// <summary>Part: rules of the order.</summary>
    public required string Rules { get; init; }

    /// <summary>What it is for.</summary>
    public required string RulesHint { get; init; }

    /// <summary>The rule to choose.</summary>
    public required string RuleKind { get; init; }

    /// <summary>So many in a row.</summary>
    public required string RunRule { get; init; }

    /// <summary>So many close together.</summary>
    public required string RowRule { get; init; }

    /// <summary>Never beside each other.</summary>
    public required string ApartRule { get; init; }

    /// <summary>Always with another beside it.</summary>
    public required string TogetherRule { get; init; }

    /// <summary>At the start.</summary>
    public required string StartsRule { get; init; }

    /// <summary>At the finish.</summary>
    public required string EndsRule { get; init; }

    /// <summary>What a rule counts.</summary>
    public required string Counts { get; init; }

    /// <summary>It counts beads.</summary>
    public required string OfBeads { get; init; }

    /// <summary>It counts groups.</summary>
    public required string OfGroups { get; init; }

    /// <summary>What it is about.</summary>
    public required string Which { get; init; }

    /// <summary>The neighbour.</summary>
    public required string Beside { get; init; }

    /// <summary>Among how many neighbours.</summary>
    public required string AmongNeighbours { get; init; }

    /// <summary>Part: the focal.</summary>
    public required string Focal { get; init; }

    /// <summary>What it is for: {deg} for what it is by itself.</summary>
    public required string FocalHint { get; init; }

    /// <summary>The degrees to type.</summary>
    public required string FocalWithin { get; init; }

    /// <summary>What is said: {deg}.</summary>
    public required string FocalSaid { get; init; }

    /// <summary>Part: beads to hand.</summary>
    public required string OnHand { get; init; }

    /// <summary>What it is for.</summary>
    public required string OnHandHint { get; init; }

    /// <summary>How many there are.</summary>
    public required string HowMany { get; init; }

    /// <summary>Part: wrists.</summary>
    public required string Wrists { get; init; }

    /// <summary>What it is for.</summary>
    public required string WristsHint { get; init; }

    /// <summary>A wrist to type.</summary>
    public required string Wrist { get; init; }

    /// <summary>How much it counts.</summary>
    public required string Weight { get; init; }

    /// <summary>What is said: {mm}, {weight}.</summary>
    public required string WristSaid { get; init; }

    /// <summary>Adults’ wrists.</summary>
    public required string Adults { get; init; }

    /// <summary>Part: what is judged.</summary>
    public required string Judged { get; init; }

    /// <summary>What it is for.</summary>
    public required string JudgedHint { get; init; }

    /// <summary>The mean.</summary>
    public required string JudgedMean { get; init; }

    /// <summary>Nineteen in twenty.</summary>
    public required string JudgedNineteen { get; init; }

    /// <summary>It could not be kept.</summary>
    public required string NotKept { get; init; }
}
