using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Binding;

/// <summary>Reads what is written for a pattern.</summary>
internal static class PatternBinder
{
    // Two thousand beads that repeat nowhere, each named by the longest id.
    private const int MostAnchor = 100_000;

    /// <summary>What is written; none of it when there is no such field; null when the field is wrong.</summary>
    public static PatternNotes? Read(Fields piece, FaultList faults)
    {
        if (!piece.Has("pattern")) return PatternNotes.None;
        if (piece.Inner("pattern", PieceFields.Pattern) is not { } fields) return null;
        return new PatternNotes
        {
            Introduction = fields.Text("introduction", PatternNotes.MostText),
            Level = fields.Word("level", PieceFields.Levels),
            Minutes = fields.Whole("minutes", PatternNotes.TimeMinutes),
            Techniques = fields.Texts("techniques"),
            Care = fields.Text("care", PatternNotes.MostText),
            Usage = fields.Text("usage", PatternNotes.MostText),
            By = fields.Text("by"),
            Words = Words(fields, faults),
            Testers = Testers(fields, faults),
        };
    }

    private static ImmutableArray<StepText> Words(Fields pattern, FaultList faults)
    {
        var words = ImmutableArray.CreateBuilder<StepText>();
        foreach (var item in pattern.List("words") ?? [])
        {
            if (Fields.Of(item, PieceFields.StepWords, faults) is not { } fields) continue;
            var step = fields.Require("step") ? fields.Text("step", mayBeEmpty: false) : null;
            var text = fields.Require("text") ? fields.Text("text", PatternNotes.MostText, mayBeEmpty: false) : null;
            if (step is not null && text is not null) words.Add(new StepText(Anchor(fields, step), text));
        }
        return words.ToImmutable();
    }

    private static ImmutableArray<TesterNote> Testers(Fields pattern, FaultList faults)
    {
        var notes = ImmutableArray.CreateBuilder<TesterNote>();
        foreach (var item in pattern.List("testers") ?? [])
        {
            if (Fields.Of(item, PieceFields.TesterNote, faults) is not { } fields) continue;
            var step = fields.Text("step", mayBeEmpty: false);
            if (fields.Require("note") && fields.Text("note", PatternNotes.MostText, mayBeEmpty: false) is { } note)
                notes.Add(new TesterNote(step is null ? null : Anchor(fields, step), note, fields.Text("by") ?? "", fields.Text("version") ?? "", fields.YesOrNo("settled") ?? false));
        }
        return notes.ToImmutable();
    }

    private static StepAnchor Anchor(Fields fields, string step) =>
        new(step, fields.Text("strings", MostAnchor) ?? "", fields.Text("after", MostAnchor) ?? "", fields.Text("before", MostAnchor) ?? "");
}
