using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Documents.Pages;

namespace Coilwright.Documents.Canvases;

/// <summary>A way to write a document: one per kind of file. Every document can be drawn by every one of them.</summary>
public interface IDocumentCanvas
{
    /// <summary>How its files' names end, with the dot.</summary>
    string Ending { get; }

    /// <summary>Writes the document. The same document and setup give the same bytes, on any day and in any locale.</summary>
    DrawnDocument Draw(PageDocument document, PageSetup setup);
}

/// <summary>A document as a file's bytes, or why it could not be written.</summary>
/// <param name="Bytes">The file; empty when there are faults.</param>
/// <param name="Faults">What stands in the way, in the order of the text; empty when it was written.</param>
public sealed record DrawnDocument(ReadOnlyMemory<byte> Bytes, ImmutableArray<Fault> Faults);
