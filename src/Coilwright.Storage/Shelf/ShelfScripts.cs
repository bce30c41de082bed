using System.Collections.Immutable;
using System.Reflection;
using DbUp.Engine;

namespace Coilwright.Storage.Shelf;

/// <summary>The scripts that describe a store and bring an older one up to date, as they lie in the program.</summary>
internal static class ShelfScripts
{
    /// <summary>The scripts of a store, in the order in which they are run. A store remembers them by name, so a name never changes.</summary>
    /// <param name="store">The store, as the project file names its scripts.</param>
    public static ImmutableArray<SqlScript> Of(string store)
    {
        var (assembly, folder) = (Assembly.GetExecutingAssembly(), store + "/");
        return [.. assembly.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(name =>
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            return new SqlScript(name[folder.Length..], reader.ReadToEnd());
        })];
    }
}
