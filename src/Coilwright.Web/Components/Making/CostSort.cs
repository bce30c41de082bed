namespace Coilwright.Web.Components.Making;

/// <summary>What a field of the file of costs holds.</summary>
public enum CostSort
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>Whether something is so.</summary>
    Tick,

    /// <summary>Some of a few words.</summary>
    Words,

    /// <summary>One of a few words.</summary>
    OneWord,
}
