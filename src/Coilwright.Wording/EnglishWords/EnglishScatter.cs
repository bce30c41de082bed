namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ScatterWords"/>.</summary>
internal static class EnglishScatter
{
    internal static ScatterWords Make() => new()
    {
        Heading = "An order without a repeat",
        Lead = "The same beads and groups strung as if by chance, and yet well spread: groups stay whole, spacers and focal stay where they are.",
        NoneShows = "No repeat shows: no distance and no stretch comes again more often than chance would have it, and no kind is bunched or missing for long.",
        SomeShows = "Some repeat still shows: these amounts and rules leave no room for an order without.",
        Alike = "Most alike {period} {period:place|places} on: {share:percent} have their like there; up to {upTo:percent} shows no repeat.",
        Longest = "The longest stretch that comes again has {beads} {beads:bead or group|beads or groups}; up to {upTo} shows no repeat.",
        Against = "{after:percent} of the groups' length then lies against your wish.",
        TextAnew = "The order is written anew; remarks in it go.",
        OneKind = "There are not two kinds of bead or group that may change places.",
        NoneAllowed = "No order was found that keeps your rules. Loosen one and try again.",
        NotWritten = "The order cannot be written: one group's name stands for different beads.",
        Make = "Scatter",
        Another = "Scatter otherwise",
        Written = "It is written to {file}.",
    };
}
