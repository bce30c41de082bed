namespace Coilwright.Wording;

/// <summary>Words of the command line's help and of its errors.</summary>
public sealed record HelpWords
{
    /// <summary>What the program is.</summary>
    public required string Program { get; init; }

    /// <summary>What <c>reckon</c> does.</summary>
    public required string Reckon { get; init; }

    /// <summary>What <c>sheet</c> does.</summary>
    public required string Sheet { get; init; }

    /// <summary>What <c>pattern</c> does.</summary>
    public required string Pattern { get; init; }

    /// <summary>What <c>arrange</c> does.</summary>
    public required string Arrange { get; init; }

    /// <summary><c>--out</c> of <c>arrange</c>.</summary>
    public required string ArrangeOut { get; init; }

    /// <summary>What <c>sizes</c> does.</summary>
    public required string Sizes { get; init; }

    /// <summary><c>--wrists</c>: {max}.</summary>
    public required string Wrists { get; init; }

    /// <summary><c>--out</c> of <c>sizes</c>.</summary>
    public required string SizesOut { get; init; }

    /// <summary>What <c>scatter</c> does.</summary>
    public required string Scatter { get; init; }

    /// <summary><c>--out</c> of <c>scatter</c>.</summary>
    public required string ScatterOut { get; init; }

    /// <summary>What <c>settle</c> does.</summary>
    public required string Settle { get; init; }

    /// <summary><c>--aspect</c>: {usual}.</summary>
    public required string Aspect { get; init; }

    /// <summary><c>--taper</c>.</summary>
    public required string Taper { get; init; }

    /// <summary><c>--arm</c>: {known}.</summary>
    public required string ArmHeld { get; init; }

    /// <summary><c>--glb</c> of <c>settle</c>.</summary>
    public required string SettleGlb { get; init; }

    /// <summary>The run was stopped.</summary>
    public required string Stopped { get; init; }

    /// <summary><c>--settled</c> of <c>reckon</c>.</summary>
    public required string Settled { get; init; }

    /// <summary><c>--effort</c>: {usual}.</summary>
    public required string Effort { get; init; }

    /// <summary><c>--seconds</c>.</summary>
    public required string Seconds { get; init; }

    /// <summary><c>--out</c> of <c>sheet</c>.</summary>
    public required string SheetOut { get; init; }

    /// <summary><c>--paper</c>.</summary>
    public required string SheetPaper { get; init; }

    /// <summary><c>--sizes</c> of <c>sheet</c>.</summary>
    public required string SheetSizes { get; init; }

    /// <summary><c>--large-print</c>.</summary>
    public required string SheetLargePrint { get; init; }

    /// <summary><c>--greyscale</c>.</summary>
    public required string SheetGreyscale { get; init; }

    /// <summary><c>--glb</c>.</summary>
    public required string SheetGlb { get; init; }

    /// <summary>The option of writing the model as the piece sits: {other} option that it belongs to; none where the model is written anyway.</summary>
    public required string ModelSettled { get; init; }

    /// <summary><c>--ink-saving</c>.</summary>
    public required string SheetInkSaving { get; init; }

    /// <summary><c>--cover</c>.</summary>
    public required string PatternCover { get; init; }

    /// <summary><c>--colourway</c>.</summary>
    public required string PatternColourway { get; init; }

    /// <summary>What stands over what the proof-reader found.</summary>
    public required string PatternProof { get; init; }

    /// <summary>What it found in one text: {where}, {found}.</summary>
    public required string PatternFound { get; init; }

    /// <summary>A page was written: {file}.</summary>
    public required string SheetWritten { get; init; }

    /// <summary>The piece.</summary>
    public required string Piece { get; init; }

    /// <summary><c>--wrist</c>.</summary>
    public required string Wrist { get; init; }

    /// <summary><c>--worn-circumference</c>.</summary>
    public required string WornCircumference { get; init; }

    /// <summary><c>--seed</c>.</summary>
    public required string Seed { get; init; }

    /// <summary><c>--json</c>.</summary>
    public required string Json { get; init; }

    /// <summary><c>--draw</c>.</summary>
    public required string Draw { get; init; }

    /// <summary><c>--language</c>: {codes}.</summary>
    public required string Language { get; init; }

    /// <summary><c>--help</c>.</summary>
    public required string Help { get; init; }

    /// <summary><c>--version</c>.</summary>
    public required string Version { get; init; }

    /// <summary>Heading of the usage line.</summary>
    public required string UsageHeading { get; init; }

    /// <summary>Heading of the verbs.</summary>
    public required string VerbsHeading { get; init; }

    /// <summary>Heading of the options.</summary>
    public required string OptionsHeading { get; init; }

    /// <summary>Stands for options in the usage line.</summary>
    public required string OptionsWord { get; init; }

    /// <summary>A piece file in the examples.</summary>
    public required string ExamplePiece { get; init; }

    /// <summary>A drawing in the examples.</summary>
    public required string ExampleDrawing { get; init; }

    /// <summary>Another piece file in the examples: what a better order is written to.</summary>
    public required string ExampleBetter { get; init; }

    /// <summary>A folder in the examples.</summary>
    public required string ExampleFolder { get; init; }

    /// <summary>Heading of the examples.</summary>
    public required string ExamplesHeading { get; init; }

    /// <summary>Heading of the exit codes.</summary>
    public required string ExitCodesHeading { get; init; }

    /// <summary>The exit codes, one a line, as code and meaning.</summary>
    public required IReadOnlyList<(int Code, string Meaning)> ExitCodes { get; init; }

    /// <summary>Where to find more: {command}.</summary>
    public required string More { get; init; }

    /// <summary>Place of a fault in a file: {file}, optionally {line}, {column}, {field}.</summary>
    public required string FaultPlace { get; init; }

    /// <summary>Begins how to mend a fault.</summary>
    public required string ToMend { get; init; }

    /// <summary>Further faults that are not shown: {more}.</summary>
    public required string FurtherFaults { get; init; }

    /// <summary>A drawing was written: {file}.</summary>
    public required string Drawn { get; init; }
}
