using System.Globalization;
using System.Runtime.InteropServices;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Coilwright.Web.Components;

/// <summary>A picture in the page whose parts stay where they are when it is drawn anew: what did not change is not sent again, and what only moved is
/// moved by its browser.</summary>
/// <remarks>Groups and what stands at a place of its own are elements; what those show is written by <see cref="SvgCanvas"/> round their own origin. As wide as
/// there is room, and bare of names.</remarks>
public sealed class DrawnInParts : ComponentBase
{
    private readonly Dictionary<int, int> _clipped = [];
    private Picture? _shown;
    private SvgOptions _options = new();

    /// <summary>The picture.</summary>
    [Parameter, EditorRequired]
    public Picture Picture { get; set; } = null!;

    /// <summary>Put before every id and symbol name. Its symbols are in the page already.</summary>
    [Parameter, EditorRequired]
    public string IdPrefix { get; set; } = "";

    /// <summary>What a bead, by its place in the order from 0, is known by from picture to picture.</summary>
    [Parameter, EditorRequired]
    public Func<int, int> BeadKey { get; set; } = bead => bead;

    /// <inheritdoc/>
    protected override void OnInitialized() => _options = new SvgOptions { Fluid = true, Bare = true, ForScreen = true, SymbolsElsewhere = true, IdPrefix = IdPrefix };

    /// <inheritdoc/>
    protected override bool ShouldRender() => !ReferenceEquals(_shown, Picture);

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        _shown = Picture;
        _clipped.Clear();
        builder.OpenElement(0, "svg");
        // In a page a language goes by its name alone.
        foreach (var (name, value) in SvgCanvas.ElementOf(Picture, _options)) builder.AddAttribute(1, name == "xml:lang" ? "lang" : name, value);
        Words(builder, "title", SvgCanvas.TitleId, Picture.Title);
        Words(builder, "desc", SvgCanvas.DescId, Picture.Description);
        Add(builder, Picture.Marks);
        builder.CloseElement();
    }

    private void Words(RenderTreeBuilder builder, string element, string id, string words)
    {
        builder.OpenElement(2, element);
        builder.AddAttribute(3, "id", IdPrefix + id);
        builder.AddContent(4, words);
        builder.CloseElement();
    }

    private void Add(RenderTreeBuilder builder, IEnumerable<Mark> marks)
    {
        foreach (var mark in marks)
            switch (mark)
            {
                case Group { Clip: null, OfBead: null } group:
                    builder.OpenElement(5, "g");
                    Place(builder, new Point(group.MoveRightMm, group.MoveDownMm));
                    Add(builder, group.Marks);
                    builder.CloseElement();
                    break;
                // All that is drawn of most beads is the drawing of their kind.
                case Group { Clip: null, OfBead: { } bead, MoveRightMm: 0, MoveDownMm: 0, Marks: [Stamp only] }:
                    PartOfBead(builder, only, BeadKey(bead));
                    break;
                case { OfBead: { } bead }:
                    PartOfBead(builder, mark, BeadKey(bead));
                    break;
                default:
                    var (at, apart) = mark.Apart();
                    builder.OpenElement(7, "g");
                    Place(builder, at);
                    builder.AddMarkupContent(8, SvgCanvas.WriteMarks([apart], _options));
                    builder.CloseElement();
                    break;
            }
    }

    private void PartOfBead(RenderTreeBuilder builder, Mark mark, int key)
    {
        var (at, apart) = mark.Apart();
        builder.OpenElement(9, "g");
        // A bead's letter can have a patch beneath it, or a line that leads to it.
        builder.SetKey((key, mark.GetType()));
        Place(builder, at);
        builder.AddMarkupContent(10, SvgCanvas.WriteMarks([apart], mark is Group ? _options with { ClipInfix = ClipsOf(key) } : _options));
        builder.CloseElement();
    }

    // A bead over an edge stands on both rows, each showing its own part.
    private string ClipsOf(int key)
    {
        CollectionsMarshal.GetValueRefOrAddDefault(_clipped, key, out _)++;
        return string.Create(CultureInfo.InvariantCulture, $"{key}-{_clipped[key]}-");
    }

    private void Place(RenderTreeBuilder builder, Point at)
    {
        if (at != default) builder.AddAttribute(6, "transform", SvgCanvas.TransformTo(at, _options));
    }
}
