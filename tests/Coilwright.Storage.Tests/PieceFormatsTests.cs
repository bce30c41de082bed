using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Tests;

/// <summary>Older formats are brought up to date in memory, step by step. There is none yet, so the steps here are made up.</summary>
public class PieceFormatsTests
{
    private static readonly PieceMigration[] MadeUp =
    [
        new("test/1", "test/2", tree =>
        {
            tree["title"] = tree["name"]!.DeepClone();
            tree.Remove("name");
        }),
        new("test/2", "test/3", tree => tree["turns"] = tree["title"]!.GetValue<string>().Length),
    ];

    [Theory]
    [InlineData("""{ "format": "test/1", "name": "Kelp" }""")]
    [InlineData("""{ "format": "test/2", "title": "Kelp" }""")]
    [InlineData("""{ "format": "test/3", "title": "Kelp", "turns": 4 }""")]
    public void Each_older_format_goes_through_every_step_after_its_own(string file)
    {
        var faults = new FaultList();
        var text = JsonText.Read(Encoding.UTF8.GetBytes(file), out _)!;
        Assert.True(PieceFormats.Accept(ref text, faults, "test/3", [.. MadeUp]));
        Assert.Equal(["format: test/3", "title: Kelp", "turns: 4"], text.Root.Fields.Select(f => $"{f.Name.Text}: {f.Value.Written}"));
    }

    [Theory]
    [InlineData("""{ "format": "test/9" }""", FaultCodes.FormatUnknown, "test/1, test/2, test/3")]
    [InlineData("""{ "format": "test/1", "name": "a", "name": "b" }""", FaultCodes.FieldTwice, null)]
    [InlineData("""{ "name": "a" }""", FaultCodes.FieldMissing, null)]
    [InlineData("""[1]""", FaultCodes.FieldType, null)]
    public void What_cannot_be_brought_up_to_date_is_told(string file, string code, string? known)
    {
        var faults = new FaultList();
        var text = JsonText.Read(Encoding.UTF8.GetBytes(file), out _)!;
        Assert.False(PieceFormats.Accept(ref text, faults, "test/3", [.. MadeUp]));
        var fault = Assert.Single(faults.InOrder());
        Assert.Equal((code, known), (fault.Code, fault.Values.GetValueOrDefault("known")));
    }

    [Fact]
    public void Every_step_has_a_sample_of_the_format_it_starts_from_and_each_sample_is_read()
    {
        var samples = Directory.GetFiles(Path.Combine(TestData.Root, "tests", "Coilwright.Storage.Tests", "Samples"), "*.piece.json");
        foreach (var sample in samples) Assert.Empty(PieceFile.ReadFrom(sample, TestData.Data).Faults);
        var formats = samples.Select(s => JsonText.Read(File.ReadAllBytes(s), out _)!.Root.Under("format").Text).ToHashSet();
        Assert.Contains(PieceFile.Format, formats);
        Assert.All(PieceFormats.Migrations, m => Assert.Contains(m.From, formats));
    }
}
