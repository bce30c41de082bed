using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Everything found wrong in one file, up to a limit that a person would still read.</summary>
internal sealed class FaultList
{
    /// <summary>After this many faults the rest is left for the next reading: a file that is wrong throughout would drown its maker.</summary>
    public const int Most = 100;

    private readonly List<Fault> _faults = [];

    /// <summary>How many there are.</summary>
    public int Count => _faults.Count;

    /// <summary>Whether no more are taken.</summary>
    public bool Full => _faults.Count >= Most;

    /// <summary>Adds one.</summary>
    public void Add(Fault fault)
    {
        if (!Full) _faults.Add(fault);
    }

    /// <summary>Adds one about a value.</summary>
    public void Add(JsonValue at, string code, params ReadOnlySpan<(string Name, string Value)> values)
    {
        if (!Full) _faults.Add(at.Fault(code, values));
    }

    /// <summary>Adds one about a field that is not there: it stands where its object starts.</summary>
    public void AddMissing(JsonValue parent, string field, string code, params ReadOnlySpan<(string Name, string Value)> values)
    {
        if (Full) return;
        var (line, column) = parent.Place;
        var fault = Fault.Of(code, field, "", values).At(line, column);
        var path = parent.Path;
        _faults.Add(path.Length == 0 ? fault : fault.Under(path));
    }

    /// <summary>Adds one that a part of the core found, with its field relative to <paramref name="parent"/>: it is given its whole path and the
    /// place of the deepest value that the path leads to.</summary>
    public void AddFrom(JsonValue parent, Fault fault)
    {
        if (Full) return;
        var at = parent.Under(fault.Field);
        var (line, column) = at.Place;
        var path = parent.Path;
        var written = at != parent && at.Written.Length > 0 ? at.Written : fault.Value;
        _faults.Add((path.Length == 0 ? fault : fault.Under(path)) with { Line = line, Column = column, Value = written });
    }

    /// <summary>The faults in the order of the file.</summary>
    public ImmutableArray<Fault> InOrder() => [.. _faults.OrderBy(f => f.Line).ThenBy(f => f.Column)];
}
