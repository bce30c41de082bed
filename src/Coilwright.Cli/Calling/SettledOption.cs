using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of writing a piece's model as it sits, and how that is found.</summary>
internal static class SettledOption
{
    private const string Name = "--settled";

    /// <summary>Makes it.</summary>
    /// <param name="language">The language.</param>
    /// <param name="with">The option that writes the model; null where it is written anyway.</param>
    public static Option<bool> Make(Language language, Option? with = null) => new(Name) { Description = language.Sentence(language.Help.ModelSettled, ("other", with?.Name)) };

    /// <summary>How a piece lies, with the arm level and a usual wrist; where no rest was found there is a fault that says why.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="data">The program's data.</param>
    /// <param name="wristMm">The wrist, mm; null for its wearer's.</param>
    /// <param name="language">The language that it is said in.</param>
    /// <param name="cancel">Stops it.</param>
    public static (Settled? Settled, Fault? Fault) Settle(Piece piece, ReckoningData data, double? wristMm, Language language, CancellationToken cancel)
    {
        var settled = Settling.Of(piece, data.Choices, new SettleRequest(wristMm ?? piece.Wearer.WristMm), cancel);
        return settled.Lie is not null ? (settled, null) : (null, Fault.Of(UsageCodes.NotSettled, Name, "", ("why", new SettleSentences(settled, piece, data.Choices, language).Why)));
    }
}
