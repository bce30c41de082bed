using System.Collections.Immutable;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A written pattern as JSON, <c>coilwright.pattern/1</c>: its files, its steps as data, and what the proof-reader found; described in docs/pattern.schema.json.</summary>
internal static class PatternJson
{
    public const string Schema = "coilwright.pattern/1";

    public static byte[] Of(Reckoned r, PageSetup setup, IEnumerable<string> files, ImmutableArray<PatternStep> steps, MatchedTexts texts, ImmutableArray<ProofOfText> found, Language language)
    {
        using var json = new JsonPage(language);
        using (json.Object())
        {
            DocumentJson.Head(json, Schema, r, setup, language);
            using (json.Array("files"))
                foreach (var file in files) json.Item(file);
            Steps(json, r, steps, texts, language);
            Proof(json, r, found, language);
            ReckonJson.Notices(json, r, new BeadNames(r), language);
        }
        return json.ToBytes();
    }

    private static void Steps(JsonPage json, Reckoned r, ImmutableArray<PatternStep> steps, MatchedTexts texts, Language language)
    {
        var sentences = new PatternSentences(r, language);
        using var all = json.Array("steps");
        foreach (var (step, own) in steps.Zip(texts.OfStep))
            using (json.Object())
            {
                json.Text("step", step.Id);
                json.Whole("number", step.Number);
                json.Text("does", ActionWord(step.Action));
                if (step.Turn is { } turn) json.Whole("turn", turn);
                json.Text("text", own?.Text ?? sentences.Of(step));
                json.YesOrNo("ownWords", own is not null);
                if (step.Strung is { } strung)
                {
                    if (strung.Group is { } group) json.Text("group", group);
                    using (json.Array("strings"))
                        foreach (var kind in strung.Kinds) json.Item(r.Piece.Beads[kind].Id);
                }
                json.Whole("beadsSoFar", step.BeadsSoFar);
                json.Mm("alongMm", step.LengthSoFarMm);
                using (json.Array("cautions"))
                    foreach (var caution in step.Cautions) json.Item(sentences.Of(caution));
            }
    }

    private static void Proof(JsonPage json, Reckoned r, ImmutableArray<ProofOfText> found, Language language)
    {
        var sentences = new PatternSentences(r, language);
        using var all = json.Array("proof");
        foreach (var text in found)
            foreach (var mark in text.Marks)
                using (json.Object())
                {
                    json.Text("where", text.Where);
                    json.Text("code", SlipWord(mark.Slip));
                    json.Whole("at", mark.At);
                    json.Whole("length", mark.Length);
                    json.Text("said", mark.Said);
                    json.Text("message", sentences.Of(mark));
                }
    }

    private static string ActionWord(StepAction action) => action switch
    {
        StepAction.CutWire => "cutWire",
        StepAction.FirstEnd => "firstEnd",
        StepAction.StringBeads => "stringBeads",
        StepAction.LastEnd => "lastEnd",
        _ => "tryOn",
    };

    private static string SlipWord(ProofSlip slip) => slip switch
    {
        ProofSlip.LetterUnknown => "letter-unknown",
        ProofSlip.LetterElsewhere => "letter-elsewhere",
        ProofSlip.LetterMissing => "letter-missing",
        ProofSlip.CountDiffers => "count-differs",
        ProofSlip.OrderDiffers => "order-differs",
        ProofSlip.LengthUnknown => "length-unknown",
        ProofSlip.LengthsDisagree => "lengths-disagree",
        ProofSlip.MassUnknown => "mass-unknown",
        ProofSlip.NumberUnknown => "number-unknown",
        ProofSlip.Promise => "promise",
        ProofSlip.WrittenForOther => "written-for-other",
        _ => "step-gone",
    };
}
