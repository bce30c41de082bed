using System.CommandLine;
using Coilwright.Cli.Calling;

namespace Coilwright.Cli.Commands;

/// <summary>Every verb there is. A new one is a file beside this one and a line here.</summary>
internal static class CommandList
{
    public static IEnumerable<Command> All(Output output) =>
    [
        ReckonCommand.Make(output),
        ArrangeCommand.Make(output),
        SizesCommand.Make(output),
        ScatterCommand.Make(output),
        SettleCommand.Make(output),
        SheetCommand.Make(output),
        PatternCommand.Make(output),
        CutCommand.Make(output),
        ShopCommand.Make(output),
        KitCommand.Make(output),
        PriceCommand.Make(output),
        ListingCommand.Make(output),
        BatchCommand.Make(output),
        QuoteCommand.Make(output),
        ClassCommand.Make(output),
        PublishCommand.Make(output),
        ErrataCommand.Make(output),
        SubstituteCommand.Make(output),
        PaletteCommand.Make(output),
        TrayCommand.Make(output),
    ];
}
