using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Listings;

/// <summary>Whether a piece fits a buyer's wrist.</summary>
public enum WillFit
{
    /// <summary>Yes, with the turns it is designed for.</summary>
    Yes,

    /// <summary>It can be worn, but not as it is meant to: with more or fewer turns, or with its ends too far apart.</summary>
    Otherwise,

    /// <summary>No.</summary>
    No,
}

/// <summary>Why it does not.</summary>
public enum WhyNotFit
{
    /// <summary>It does.</summary>
    None,

    /// <summary>The coil is so much larger than the wrist that it hangs loose.</summary>
    HangsLoose,

    /// <summary>It does not go once round.</summary>
    UnderOneTurn,

    /// <summary>It makes fewer turns than it is designed for.</summary>
    FewerTurns,

    /// <summary>It makes more.</summary>
    MoreTurns,

    /// <summary>Its ends lie less far over each other than the maker wants.</summary>
    EndsTooFar,

    /// <summary>It cannot be made or worn as it is, on whatever wrist.</summary>
    NotAsItIs,
}

/// <summary>What a maker answers to "will it fit me?".</summary>
/// <remarks>Judged by the same figures as <see cref="WristsServed"/>. No wrist is known to the millimetre: <see cref="IsNearBorder"/> tells where another
/// measurement may change the answer.</remarks>
public sealed record FitAnswer
{
    /// <summary>The readings on the buyer's wrist.</summary>
    public required Reckoned On { get; init; }

    /// <summary>The answer.</summary>
    public required WillFit Answer { get; init; }

    /// <summary>Why it is not a plain yes.</summary>
    public required WhyNotFit Why { get; init; }

    /// <summary>The turns it is designed for; where she did not say, those that her wearer's own wrist takes.</summary>
    public required double DesignedTurns { get; init; }

    /// <summary>How much more of beads the design's turns ask on this wrist, mm; below 0 less.</summary>
    public required double MoreBeadsMm { get; init; }

    /// <summary>How much less far the ends lie over each other than the maker wants, mm; 0 where she does not say, or where they do.</summary>
    public required double EndsShortMm { get; init; }

    /// <summary>Whether a wrist that differs by no more than the band of the worn size would be answered otherwise.</summary>
    public required bool IsNearBorder { get; init; }

    /// <summary>Half width of that band, mm of wrist.</summary>
    public double BandMm => On.Worn.BandMm;

    /// <summary>Whether to order it in another size: made for this wrist.</summary>
    public bool OrderOtherSize => Answer != WillFit.Yes && Why != WhyNotFit.NotAsItIs;

    /// <summary>Answers for one wrist.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="wristMm">The wrist, mm.</param>
    /// <param name="cancel">Stops long work.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wrist is not from <see cref="Wearer.LeastWristMm"/> to <see cref="Wearer.MostWristMm"/>.</exception>
    public static FitAnswer Of(Piece piece, ReckoningData data, double wristMm, CancellationToken cancel = default)
    {
        var on = Reckoning.Of(piece, data, new ReckonRequest { WristMm = wristMm }, cancel);
        var designed = piece.Wishes.Turns ?? Reckoning.Of(piece, data, null, cancel).Fit.TurnsWorn;
        var choices = data.Choices;
        var why = WhyAt(0);
        // On a wrist so much smaller or larger the coil has as much more or less room, and each turn takes about as much less or more wire.
        var band = on.Worn.BandMm;
        return new FitAnswer
        {
            On = on,
            Answer = AnswerTo(why),
            Why = why,
            DesignedTurns = designed,
            MoreBeadsMm = designed * on.Worn.WirePerTurnMm - on.Lie.BeadedMm,
            EndsShortMm = EndsShortMm(0),
            IsNearBorder = AnswerTo(WhyAt(-band)) != AnswerTo(why) || AnswerTo(WhyAt(band)) != AnswerTo(why),
        };

        WhyNotFit WhyAt(double moreMm)
        {
            // A coil that rests is as large on a smaller wrist.
            var perTurnMm = on.Worn.WirePerTurnMm + moreMm;
            var turns = moreMm == 0 ? on.Fit.TurnsWorn : on.Lie.BeadedMm / perTurnMm;
            return !on.Fit.Fits ? WhyNotFit.NotAsItIs
                : on.Worn.RoomMm - moreMm > choices.LooseFromMm ? WhyNotFit.HangsLoose
                : turns < 1 - choices.OverlapToleranceMm / perTurnMm ? WhyNotFit.UnderOneTurn
                : designed - turns >= choices.FewerTurnsFrom ? WhyNotFit.FewerTurns
                : turns - designed >= choices.FewerTurnsFrom ? WhyNotFit.MoreTurns
                : EndsShortMm(moreMm) > choices.OverlapToleranceMm ? WhyNotFit.EndsTooFar
                : WhyNotFit.None;
        }

        double EndsShortMm(double moreMm) =>
            piece.Ends.OverlapMm is { } wanted ? Math.Max(0, wanted - (on.Fit.EndsOverlapMm - on.Fit.OverlapTurns * moreMm)) : 0;
    }

    private static WillFit AnswerTo(WhyNotFit why) => why switch
    {
        WhyNotFit.None => WillFit.Yes,
        WhyNotFit.FewerTurns or WhyNotFit.MoreTurns or WhyNotFit.EndsTooFar => WillFit.Otherwise,
        _ => WillFit.No,
    };
}
