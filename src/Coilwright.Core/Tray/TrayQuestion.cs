using System.Collections.Immutable;

namespace Coilwright.Core.Tray;

/// <summary>What is looked for in a tray. What is null or empty does not matter.</summary>
public sealed record TrayQuestion
{
    /// <summary>Words, each of which begins a word of the kind: of its name, key, other names, shape, material, finish, drawer, lot, colour or size.</summary>
    public string Text { get; init; } = "";

    /// <summary>The shape, by its own name.</summary>
    public string? Shape { get; init; }

    /// <summary>The colour family that one of its colours is of, by key.</summary>
    public string? Family { get; init; }

    /// <summary>The material, as in a piece file.</summary>
    public string? Material { get; init; }

    /// <summary>The finish, as it is written.</summary>
    public string? Coating { get; init; }

    /// <summary>The drawer, as it is written.</summary>
    public string? Drawer { get; init; }

    /// <summary>Shortest length along the hole, mm, itself included.</summary>
    public double? LeastMm { get; init; }

    /// <summary>Longest length along the hole, mm, itself included.</summary>
    public double? MostMm { get; init; }
}

/// <summary>What was found.</summary>
/// <param name="Count">How many kinds there are.</param>
/// <param name="Shown">The kinds that were asked for of them, by name.</param>
public sealed record TrayFound(int Count, ImmutableArray<TrayKind> Shown);
