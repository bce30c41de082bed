using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Binding;

namespace Coilwright.Storage;

/// <summary>What came of reading the program's own data.</summary>
/// <param name="Data">The data, or null when there were faults.</param>
/// <param name="Faults">Everything wrong with the files, each a <see cref="FaultCodes.DataBroken"/>; empty exactly when there is data.</param>
public sealed record DataReadResult(ReckoningData? Data, ImmutableArray<Fault> Faults);

/// <summary>Reads the program's own data: bead materials, steels, and our own choices. The files are described in data/README.md.</summary>
public static class DataFiles
{
    /// <summary>Largest data file, in bytes.</summary>
    private const int MaxBytes = 1024 * 1024;

    /// <summary>The folder that is delivered with the program.</summary>
    public static string DefaultFolder => Path.Combine(AppContext.BaseDirectory, "data");

    /// <summary>Reads the data that is delivered with the program.</summary>
    public static DataReadResult LoadDefault() => Load(DefaultFolder);

    /// <summary>Reads a folder of data.</summary>
    /// <param name="folder">The folder that holds <c>choices.json</c>, <c>wrists/adults.json</c>, <c>materials/</c> and <c>stringing-materials/memory-wire/</c>.</param>
    public static DataReadResult Load(string folder)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var materials = Each(Path.Combine(folder, "materials"), faults, DataBinder.Material);
        var steels = Each(Path.Combine(folder, "stringing-materials", "memory-wire"), faults, DataBinder.Steel);
        var choices = One(Path.Combine(folder, "choices.json"), faults, DataBinder.Choices);
        var adults = One(Path.Combine(folder, "wrists", "adults.json"), faults, DataBinder.Wrists);
        if (faults.Count > 0 || choices is null || adults is null) return new DataReadResult(null, faults.ToImmutable());
        return new DataReadResult(new ReckoningData
        {
            Materials = materials.ToImmutableSortedDictionary(m => m.Key, m => m, StringComparer.Ordinal),
            Steels = steels.ToImmutableSortedDictionary(s => s.Key, s => s, StringComparer.Ordinal),
            Choices = choices,
            AdultWrists = adults.Wrists,
        }, []);
    }

    /// <summary>Reads the small catalogue of beads, by key.</summary>
    /// <param name="folder">The folder that holds <c>beads/</c>.</param>
    /// <param name="data">The rest of the data: a bead may name its material.</param>
    public static (ImmutableArray<CatalogueBead> Beads, ImmutableArray<Fault> Faults) LoadCatalogue(string folder, ReckoningData data)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var beads = Each<CatalogueBead>(Path.Combine(folder, "beads"), faults, (at, name, list) => DataBinder.Catalogue(at, name, data, list));
        return ([.. beads.OrderBy(b => b.Key, StringComparer.Ordinal)], faults.ToImmutable());
    }

    /// <summary>Reads the figures behind the cautions.</summary>
    /// <param name="folder">The folder that holds <c>cautions/</c>.</param>
    public static (CautionData? Cautions, ImmutableArray<Fault> Faults) LoadCautions(string folder)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var parts = One(Path.Combine(folder, "cautions", "small-parts.json"), faults, CautionBinder.SmallParts);
        var metals = One(Path.Combine(folder, "cautions", "metals.json"), faults, CautionBinder.Metals);
        return (parts is null || metals is null ? null : new CautionData(parts, metals.Limits), faults.ToImmutable());
    }

    /// <summary>Reads the families that colours are sorted into.</summary>
    /// <param name="folder">The folder that holds <c>colours/</c>.</param>
    public static (ColourFamilies? Families, ImmutableArray<Fault> Faults) LoadColourFamilies(string folder)
    {
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var families = One<ColourFamilies>(Path.Combine(folder, "colours", "families.json"), faults, ColourBinder.Families);
        return (families, faults.ToImmutable());
    }

    private static List<T> Each<T>(string folder, ImmutableArray<Fault>.Builder faults, DataBinder.Reader<T> read) where T : class
    {
        var all = new List<T>();
        string[] files;
        try
        {
            files = Directory.GetFiles(folder, "*.json");
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            faults.Add(Broken(folder, FileTrouble.Fault(FaultCodes.FileUnreadable, folder, e)));
            return all;
        }
        Array.Sort(files, StringComparer.Ordinal);
        foreach (var file in files)
            if (One(file, faults, read) is { } one)
                all.Add(one);
        return all;
    }

    private static T? One<T>(string file, ImmutableArray<Fault>.Builder faults, DataBinder.Reader<T> read) where T : class
    {
        if (FileReading.Bytes(file, MaxBytes, out var unreadable) is not { } bytes)
        {
            faults.Add(Broken(file, unreadable!));
            return null;
        }
        if (Json.JsonText.Read(bytes, out var broken) is not { } text)
        {
            faults.Add(Broken(file, broken!));
            return null;
        }
        var list = new FaultList();
        var made = read(text.Root, Path.GetFileNameWithoutExtension(file), list);
        foreach (var fault in list.InOrder()) faults.Add(Broken(file, fault));
        return list.Count == 0 ? made : null;
    }

    private static Fault Broken(string file, Fault why) => Fault.Of(FaultCodes.DataBroken, why.Field, why.Value,
        [.. why.Values.Where(v => v.Key is not ("detail" or "file")).Select(v => (v.Key, v.Value)), ("file", file), ("detail", why.Values.GetValueOrDefault("detail", why.Code))])
        .At(why.Line, why.Column);
}
