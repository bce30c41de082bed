using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;

namespace Coilwright.Wording;

/// <summary>How a piece lies, in a maker's words; the engine's own figures apart.</summary>
public sealed class SettleSentences(Settled settled, Piece piece, ReckoningChoices choices, Language language)
{
    private readonly SettleWords _words = language.Settle;

    /// <summary>Why there is no answer, or that there is one only in part; null where all is well.</summary>
    public string? Trouble() => settled.Outcome switch
    {
        SettleOutcome.DidNotSettle => language.Sentence(_words.DidNotSettle, ("why", Why)),
        SettleOutcome.CannotClose => _words.CannotClose,
        SettleOutcome.WristBeyondYield => _words.BeyondYield,
        _ => null,
    };

    /// <summary>Why no rest was found; empty where it was.</summary>
    public string Why => settled.Reason is { } reason ? _words.Reasons[reason] : "";

    /// <summary>The plain answers.</summary>
    public IEnumerable<string> Says()
    {
        if (settled is not { Worn: { } worn, Relaxed: { } relaxed }) yield break;
        yield return language.Sentence(_words.Worn, ("wristMm", settled.Request.WristMm), ("turns", language.Number(worn.Turns, 1)), ("perTurnMm", worn.WirePerTurnMm), ("insideMm", worn.InsideMm));
        foreach (var sentence in Arm()) yield return sentence;
        yield return language.Sentence(_words.Bears, ("share", settled.BearingShare));
        var signs = SettleSigns.Of(settled, choices);
        if (settled.Widest is not { } widest) yield return _words.NoGaps;
        else if (!signs.Contains(SettleSign.Gapes)) yield return language.Sentence(_words.Close, ("gapMm", widest.GapMm));
        if (SettleSigns.MostTipped(settled) is { } most && !signs.Contains(SettleSign.Tips))
            yield return language.Sentence(_words.Flat, ("angleDeg", settled.Beads[settled.Focal!.Value].AngleDeg), ("tipsDeg", Math.Abs(most.TipsDeg)));
        yield return language.Sentence(_words.Relaxed, ("turns", language.Number(relaxed.Turns, 1)), ("insideMm", relaxed.InsideMm));
    }

    /// <summary>How the arm was held and what the wrist was taken as, each only where it is not as usual.</summary>
    public IEnumerable<string> Arm()
    {
        var request = settled.Request;
        if (request.Pose != ArmPose.TopUp) yield return language.Sentence(_words.Posed, ("arm", _words.Arms[request.Pose]));
        if (request.Aspect != SettleRequest.UsualAspect || request.Taper != 0) yield return language.Sentence(_words.Formed, [.. Form(request)]);
    }

    /// <summary>What an arm is taken as, whole: how it is held, how oval the wrist is and how it widens.</summary>
    public static string ArmTaken(SettleRequest request, Language language) =>
        language.Sentence(language.Settle.ArmTaken, [("arm", language.Settle.Arms[request.Pose]), .. Form(request), ("same", request.Taper == 0 ? 1 : null)]);

    private static IEnumerable<(string, object?)> Form(SettleRequest request)
    {
        var more = request.Taper * ArmMeasures.UpMm;
        return [("share", request.Aspect), ("moreMm", more > 0 ? more : null), ("lessMm", more < 0 ? -more : null), ("upMm", ArmMeasures.UpMm)];
    }

    /// <summary>What to mind.</summary>
    public IEnumerable<string> Minds()
    {
        foreach (var sign in SettleSigns.Of(settled, choices)) yield return sign == SettleSign.Tips && Kept() is { } kept ? Of(sign) + " " + kept : Of(sign);
        if (!settled.WithoutWeight.IsEmpty)
            yield return language.Sentence(_words.WithoutWeight, ("beads", string.Join(", ", settled.WithoutWeight.Select(id => piece.Beads.First(b => b.Id == id).Name))));
    }

    /// <summary>Beside the quick reckoning.</summary>
    public string? Beside()
    {
        if (settled.Lie is not { } lie) return null;
        var more = lie.WirePerTurnMm - settled.Quick.WirePerTurnMm;
        return language.Sentence(more >= 0 ? _words.Longer : _words.Shorter, ("quickTurns", language.Number(settled.Quick.Turns, 1)), ("quickPerTurnMm", settled.Quick.WirePerTurnMm), ("differenceMm", Math.Abs(more)));
    }

    /// <summary>Forces, stress and how it was found.</summary>
    public IEnumerable<string> Details()
    {
        if (settled.Worn is null) yield break;
        if (settled.Pushes.Where(p => p.Kind == PushKind.Wrist).ToArray() is { Length: > 0 } onWrist)
        {
            var hardest = onWrist.MaxBy(p => p.ForceN);
            yield return language.Sentence(_words.Presses, ("forceN", settled.WristN), ("mostN", hardest.ForceN), ("number", hardest.First + 1), ("bead", NameOf(hardest.First)));
        }
        yield return language.Sentence(_words.Held, ("slidingN", language.Number(Math.Abs(settled.Held.SlidingN), 3)), ("turningNmm", language.Number(Math.Abs(settled.Held.TurningNmm), 2)));
        yield return language.Sentence(_words.Stress, ("stressMPa", language.Number(settled.StressMPa, 0)), ("share", settled.StrengthMPa is { } strength ? settled.StressMPa / strength : null));
        yield return language.Sentence(_words.Path, ("steps", settled.Steps), ("radiusMm", settled.StartedFrom.RadiusMm));
    }

    /// <summary>A push: what pushes, which beads, with how much.</summary>
    public (string Kind, string Beads, string Force) Of(Push push) =>
        (_words.Kinds[push.Kind], push.Second is { } second ? $"{BeadOf(push.First)}, {BeadOf(second)}" : BeadOf(push.First), language.Number(push.ForceN, 3) + " N");

    /// <summary>The focal with the arm held one way: how, where and how far it tips.</summary>
    public (string Arm, string At, string Tips) Of(FocalStand stand) => stand.Rests
        ? (_words.Arms[stand.Pose], language.Place(stand.AngleDeg), language.Fill(_words.Angle, ("deg", language.Number(Math.Abs(stand.TipsDeg), 0))))
        : (_words.Arms[stand.Pose], _words.NoRest, "");

    private string Of(SettleSign sign) => sign switch
    {
        SettleSign.Gapes when settled.Widest is { } gap => language.Sentence(_words.Gapes, ("gapMm", gap.GapMm), ("overMm", choices.GapesOverMm), ("angleDeg", settled.Beads[gap.Bead].AngleDeg), ("number", gap.Bead + 1), ("bead", NameOf(gap.Bead))),
        SettleSign.Tips when SettleSigns.MostTipped(settled) is { } most => language.Sentence(_words.Tips, ("angleDeg", settled.Beads[settled.Focal!.Value].AngleDeg), ("tipsDeg", Math.Abs(most.TipsDeg)), ("overDeg", choices.TipsOverDeg), ("arm", _words.Arms[most.Pose])),
        SettleSign.TooTight => language.Sentence(_words.TooTight, ("share", settled.StressMPa / settled.StrengthMPa)),
        SettleSign.TooLoose => language.Sentence(_words.TooLoose, ("roomMm", settled.Relaxed!.Value.InsideMm - settled.Request.WristMm)),
        _ => _words.Jumps,
    };

    private string? Kept() => settled.FocalKept is not { } kept ? null
        : kept.LeastFriction is { } least ? language.Sentence(_words.Kept, ("slopeDeg", Math.Atan(least) * 180 / Math.PI)) : _words.NotKept;

    private string BeadOf(int index) => language.Fill(_words.Bead, ("number", index + 1), ("bead", NameOf(index)));

    private string NameOf(int index) => piece.Beads[piece.Order.Kinds[index]].Name;
}
