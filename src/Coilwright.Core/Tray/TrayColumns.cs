using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;

namespace Coilwright.Core.Tray;

/// <summary>A column of the tray as a table.</summary>
/// <param name="Name">Its name, which is promised: that of the field in a piece file where it is one.</param>
/// <param name="Of">The cell of a kind: a text, a number or nothing.</param>
public sealed record TrayColumn(string Name, Func<TrayKind, object?> Of)
{
    /// <summary>The cell as text, a number with a decimal point and to its last digit; empty for nothing.</summary>
    public string TextOf(TrayKind kind) => Of(kind) switch { double number => number.ToString("R", CultureInfo.InvariantCulture), string text => text, _ => "" };
}

/// <summary>The columns of the tray as a table. They say all of a kind: a tray that is written down and read again is the same.</summary>
/// <remarks>Several colours and several other names stand in one cell with <see cref="Between"/> between them; a name that has that sign itself becomes two.</remarks>
public static class TrayColumns
{
    /// <summary>What stands between several of a kind in one cell.</summary>
    public const string Between = " | ";

    /// <summary>A size as labels have it, <c>4 x 6</c>: read where there is no length of its own, never written.</summary>
    public const string Size = "size";

    /// <summary>The columns that are written.</summary>
    public static ImmutableArray<TrayColumn> All { get; } =
    [
        new("id", k => k.Key),
        new("name", k => k.Bead.Description.Name),
        new("shape", k => k.Bead.Description.Shape),
        new("lengthMm", k => (k.Bead.Description.Length as BeadLength.Nominal)?.Mm),
        new("toleranceMm", k => k.Bead.Description.Length is BeadLength.Nominal { ToleranceMm: not 0 and var mm } ? mm : null),
        new("lengthMinMm", k => (k.Bead.Description.Length as BeadLength.Range)?.MinMm),
        new("lengthMaxMm", k => (k.Bead.Description.Length as BeadLength.Range)?.MaxMm),
        new("row.count", k => (double?)(k.Bead.Description.Length as BeadLength.Row)?.Count),
        new("row.totalMm", k => (k.Bead.Description.Length as BeadLength.Row)?.TotalMm),
        new("widthMm", k => k.Bead.Description.WidthMm),
        new("thicknessMm", k => k.Bead.Description.ThicknessMm),
        new("boreMm", k => k.Bead.Description.BoreMm),
        new("holeOffsetMm", k => k.Bead.Description.HoleOffsetMm),
        new("endFaceMm", k => k.Bead.Description.EndFaceMm),
        new("wallMm", k => k.Bead.Description.WallMm),
        new("curveRadiusMm", k => k.Bead.Description.CurveRadiusMm),
        new("lengthIs", k => k.Bead.Description.CurvedLength switch { CurvedLength.Arc => "arc", CurvedLength.Chord => "chord", _ => null }),
        new("matched", k => k.Bead.Description.Matched ? "yes" : null),
        new("seat.lengthMm", k => k.Bead.Description.Seat?.LengthMm),
        new("seat.clearMm", k => k.Bead.Description.Seat?.ClearMm),
        new("colours", k => Together(k.Bead.Colours.IsDefault ? [] : k.Bead.Colours.Select(c => c.ToString()))),
        new("coating", k => k.Bead.Description.Coating),
        new("material", k => k.Bead.Description.Material?.Key ?? k.Bead.Description.OtherMaterial),
        new("densityGPerCm3", k => k.Bead.Description.DensityGPerCm3),
        new("massG", k => k.Bead.Description.MassG),
        new("role", k => RoleWord(k.Bead.Role)),
        new("shows", k => k.Bead.Description.Shows),
        new("pack.unit", k => k.Bead.Description.Pack?.Unit),
        new("pack.beads", k => (double?)k.Bead.Description.Pack?.Beads),
        new("price", k => (double?)k.Bead.Description.Price),
        new("lot", k => k.Bead.Description.Lot),
        new("aliases", k => Together(k.Bead.Description.Aliases.IsDefault ? [] : k.Bead.Description.Aliases)),
        new("drawer", k => k.Drawer),
    ];

    /// <summary>Names of every column that is read.</summary>
    public static ImmutableArray<string> Names { get; } = [.. All.Select(c => c.Name), Size];

    /// <summary>The column whose own name a head is; null when none.</summary>
    public static string? Find(string head) => Names.FirstOrDefault(name => string.Equals(name, head.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The word of a role, as in a piece file.</summary>
    public static string RoleWord(Role role) => role switch
    {
        Role.Main => "main",
        Role.Accent => "accent",
        Role.Spacer => "spacer",
        Role.Connector => "connector",
        Role.Focal => "focal",
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };

    private static string? Together(IEnumerable<string> texts) => string.Join(Between, texts) is { Length: > 0 } together ? together : null;
}
