using System.Collections.Immutable;

namespace Coilwright.Documents.Pages;

/// <summary>How a piece of running text is set.</summary>
public enum SpanStyle
{
    /// <summary>As the text round it.</summary>
    Plain,

    /// <summary>Heavy: what must not be missed.</summary>
    Strong,

    /// <summary>Slanted: names, asides.</summary>
    Emphasis,

    /// <summary>Lighter ink: what may be passed over.</summary>
    Quiet,

    /// <summary>A key letter: heavy, in a ring, as on the bags and in the drawings.</summary>
    Key,
}

/// <summary>A piece of running text in one style.</summary>
/// <param name="Text">The words, spaces between pieces included.</param>
/// <param name="Style">How it is set.</param>
public readonly record struct Span(string Text, SpanStyle Style = SpanStyle.Plain);

/// <summary>Running text in pieces of different style: what fills a paragraph, a cell, an item. A plain string is one, too.</summary>
public sealed class RichText
{
    private RichText(ImmutableArray<Span> spans) => Spans = spans;

    /// <summary>No text.</summary>
    public static RichText Empty { get; } = new([]);

    /// <summary>Its pieces, in order; none is empty.</summary>
    public ImmutableArray<Span> Spans { get; }

    /// <summary>Whether there is nothing to read.</summary>
    public bool IsEmpty => Spans.IsEmpty;

    /// <summary>The words alone.</summary>
    public string PlainText => string.Concat(Spans.Select(s => s.Text));

    /// <summary>Text from pieces.</summary>
    public static RichText Of(params ReadOnlySpan<Span> spans)
    {
        var kept = ImmutableArray.CreateBuilder<Span>(spans.Length);
        foreach (var span in spans)
            if (span.Text.Length > 0) kept.Add(span);
        return kept.Count == 0 ? Empty : new RichText(kept.ToImmutable());
    }

    /// <summary>Heavy text.</summary>
    public static RichText Strong(string text) => Of(new Span(text, SpanStyle.Strong));

    /// <summary>Slanted text.</summary>
    public static RichText Emphasis(string text) => Of(new Span(text, SpanStyle.Emphasis));

    /// <summary>Text in lighter ink.</summary>
    public static RichText Quiet(string text) => Of(new Span(text, SpanStyle.Quiet));

    /// <summary>A key letter.</summary>
    public static RichText Key(string letter) => Of(new Span(letter, SpanStyle.Key));

    /// <summary>A plain string as text.</summary>
    public static implicit operator RichText(string text) => Of(new Span(text));

    /// <summary>A plain string as text.</summary>
    public static RichText FromString(string text) => text;

    /// <summary>One text after the other; spaces between them are the writer's.</summary>
    public static RichText operator +(RichText first, RichText second) =>
        first.IsEmpty ? second : second.IsEmpty ? first : new RichText([.. first.Spans, .. second.Spans]);

    /// <summary>One text after the other.</summary>
    public static RichText Add(RichText first, RichText second) => first + second;

    /// <inheritdoc/>
    public override string ToString() => PlainText;
}
