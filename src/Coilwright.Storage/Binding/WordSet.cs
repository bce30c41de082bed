using System.Collections.Immutable;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Binding;

/// <summary>A closed list of words and what each stands for.</summary>
internal sealed class WordSet<T>(params (string Word, T Value)[] words) where T : struct
{
    /// <summary>The words.</summary>
    public ImmutableArray<string> Words { get; } = [.. words.Select(w => w.Word)];

    /// <summary>The words in one line, for messages.</summary>
    public string Listed => string.Join(", ", Words);

    /// <summary>What a word stands for; null when it is not in the list.</summary>
    public T? Find(string word)
    {
        foreach (var (known, value) in words)
            if (known == word)
                return value;
        return null;
    }

    /// <summary>The word for a value.</summary>
    public string WordOf(T value) => words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word;

    /// <summary>The likeliest word meant by a mistyped one; empty when none is near.</summary>
    public string Nearest(string typed) => NearestName.Of(typed, Words) ?? "";
}
