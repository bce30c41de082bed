using System.Reflection;
using System.Xml.Linq;
using Coilwright.Core.Cures;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;

namespace Coilwright.Wording.Tests;

/// <summary>The codes as the core declares them, each with what its comment promises: the comment is the contract that a sentence is held to.</summary>
internal static class Codes
{
    public static IReadOnlyList<(string Code, string Comment)> Of(Type list)
    {
        var xml = XDocument.Load(Path.ChangeExtension(list.Assembly.Location, ".xml"));
        var comments = xml.Descendants("member").ToDictionary(m => m.Attribute("name")!.Value, m => m.Element("summary")?.Value ?? "");
        return [.. list.GetFields(BindingFlags.Public | BindingFlags.Static).Where(f => f.IsLiteral)
            .Select(f => ((string)f.GetRawConstantValue()!, comments[$"F:{list.FullName}.{f.Name}"]))];
    }

    /// <summary>The codes that the comment of a property marks as code.</summary>
    public static IReadOnlyList<string> MarkedIn(Type type, string property)
    {
        var xml = XDocument.Load(Path.ChangeExtension(type.Assembly.Location, ".xml"));
        return [.. xml.Descendants("member").Single(m => m.Attribute("name")!.Value == $"P:{type.FullName}.{property}").Descendants("c").Select(c => c.Value)];
    }

    public static IReadOnlyList<(string Code, string Comment)> Faults { get; } = [.. Of(typeof(FaultCodes)), .. Of(typeof(UsageCodes))];

    public static IReadOnlyList<(string Code, string Comment)> Cures { get; } = Of(typeof(CureCodes));

    public static IReadOnlyList<(string Code, string Comment)> Notices { get; } = Of(typeof(NoticeCodes));
}
