namespace Coilwright.Wording;

/// <summary>The page of kits.</summary>
public sealed record KitPageWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Over the spares.</summary>
    public required string SparesHeading { get; init; }

    /// <summary>What spares are.</summary>
    public required string SparesHint { get; init; }

    /// <summary>Spares in each bag.</summary>
    public required string SparePerPiece { get; init; }

    /// <summary>Spares of all.</summary>
    public required string SparePercent { get; init; }

    /// <summary>Whether stock is looked at.</summary>
    public required string UseStock { get; init; }

    /// <summary>It is being planned.</summary>
    public required string Planning { get; init; }

    /// <summary>It cannot be planned.</summary>
    public required string NotPlanned { get; init; }

    /// <summary>Over the sheet of labels.</summary>
    public required string LabelsHeading { get; init; }

    /// <summary>How they are told.</summary>
    public required string LabelsHint { get; init; }

    /// <summary>The paper.</summary>
    public required string Paper { get; init; }

    /// <summary>Labels side by side.</summary>
    public required string Columns { get; init; }

    /// <summary>Labels one under the other.</summary>
    public required string Rows { get; init; }

    /// <summary>Width of a label.</summary>
    public required string Width { get; init; }

    /// <summary>Height of a label.</summary>
    public required string Height { get; init; }

    /// <summary>White at the left.</summary>
    public required string Left { get; init; }

    /// <summary>White at the top.</summary>
    public required string Top { get; init; }

    /// <summary>White between labels side by side.</summary>
    public required string Across { get; init; }

    /// <summary>White between labels one under the other.</summary>
    public required string Down { get; init; }

    /// <summary>How many labels and sheets: {labels}, {sheets}.</summary>
    public required string LabelCount { get; init; }

    /// <summary>Labels cannot be made.</summary>
    public required string NoLabels { get; init; }

    /// <summary>Saves the labels.</summary>
    public required string SaveLabels { get; init; }

    /// <summary>Saves the pick list.</summary>
    public required string SavePicks { get; init; }

    /// <summary>A piece was edited since its labels were made: {title}, {made}, {now}.</summary>
    public required string Edited { get; init; }
}
