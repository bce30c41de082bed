namespace Coilwright.Wording;

/// <summary>Where a picture is put on the cover of the written pattern. Names in braces are filled in.</summary>
public sealed record CoverWords
{
    /// <summary>What stands on the cover: legend.</summary>
    public required string Legend { get; init; }

    /// <summary>Her picture.</summary>
    public required string Picture { get; init; }

    /// <summary>The drawn coil.</summary>
    public required string Coil { get; init; }

    /// <summary>Where ink is spared it is the coil all the same.</summary>
    public required string SparedNote { get; init; }

    /// <summary>The picture itself: {title}.</summary>
    public required string Alt { get; init; }

    /// <summary>To take the picture off.</summary>
    public required string TakeOff { get; init; }

    /// <summary>It is off.</summary>
    public required string TakenOff { get; init; }

    /// <summary>To put it back.</summary>
    public required string PutBack { get; init; }

    /// <summary>To choose a photo.</summary>
    public required string ChoosePhoto { get; init; }

    /// <summary>Which ones are taken: {max}.</summary>
    public required string PhotoHint { get; init; }

    /// <summary>A photo is being read.</summary>
    public required string Reading { get; init; }

    /// <summary>It could not be put there.</summary>
    public required string NotKept { get; init; }

    /// <summary>On the page of the piece in space: to make what is shown the cover.</summary>
    public required string FromStill { get; init; }

    /// <summary>What that gives: {widthPx}, {heightPx}.</summary>
    public required string FromStillNote { get; init; }

    /// <summary>It is the cover now.</summary>
    public required string IsCover { get; init; }

    /// <summary>The way to the pattern on paper.</summary>
    public required string Look { get; init; }

    /// <summary>This browser gives no still.</summary>
    public required string NoStill { get; init; }
}
