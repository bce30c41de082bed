namespace Coilwright.Wording;

/// <summary>Trying what would end a notice.</summary>
public sealed record CureWords
{
    /// <summary>Tries it: {cure}, what it does.</summary>
    public required string TryIt { get; init; }

    /// <summary>What would be amiss then: {notices}.</summary>
    public required string Brings { get; init; }

    /// <summary>Why none is proposed for what settling found: only settling anew tells whether one helps.</summary>
    public required string SettleAnew { get; init; }

    /// <summary>It is tried: {cure}.</summary>
    public required string Tried { get; init; }

    /// <summary>Takes it back.</summary>
    public required string TakeBack { get; init; }
}
