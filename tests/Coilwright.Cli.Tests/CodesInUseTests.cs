using System.Reflection;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;
using Coilwright.Wording;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Coilwright.Cli.Tests;

/// <summary>A code that nothing gives is a sentence that nobody reads: it goes, or its check is missing.</summary>
public class CodesInUseTests
{
    // Wording holds every code beside its sentence, so it is not asked.
    private static readonly HashSet<string> Written = [.. new[] { "Coilwright.Core", "Coilwright.Storage", "Coilwright.Documents", "coilwright" }.SelectMany(TextsIn)];

    [Theory]
    [InlineData(typeof(FaultCodes))]
    [InlineData(typeof(NoticeCodes))]
    [InlineData(typeof(UsageCodes))]
    [InlineData(typeof(WhyNotCodes))]
    public void Every_code_is_given_somewhere(Type list)
    {
        var codes = list.GetFields(BindingFlags.Public | BindingFlags.Static).Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!).ToArray();
        Assert.NotEmpty(codes);
        Assert.Equal([], codes.Where(c => !Written.Contains(c)));
    }

    private static IEnumerable<string> TextsIn(string assembly)
    {
        using var module = ModuleDefinition.ReadModule(Path.Combine(AppContext.BaseDirectory, assembly + ".dll"));
        return [.. module.GetTypes().SelectMany(t => t.Methods).Where(m => m.HasBody).SelectMany(m => m.Body.Instructions)
            .Where(i => i.OpCode == OpCodes.Ldstr).Select(i => (string)i.Operand)];
    }
}
