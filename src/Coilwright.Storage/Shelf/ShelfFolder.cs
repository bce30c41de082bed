namespace Coilwright.Storage.Shelf;

/// <summary>Where the shelf lies when she does not say.</summary>
public static class ShelfFolder
{
    /// <summary>The program's folder in the user's own data: on Linux by the XDG base directory specification (<c>$XDG_DATA_HOME</c>, else
    /// <c>~/.local/share</c>), elsewhere where the system keeps data of programs that stays on this machine.</summary>
    public static string Default => OperatingSystem.IsLinux()
        ? Path.Combine(Xdg(Environment.GetEnvironmentVariable("XDG_DATA_HOME"), Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)), "coilwright")
        : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "Coilwright");

    /// <summary>The folder of the user's data by the specification, which tells to pass over a path that is not absolute.</summary>
    internal static string Xdg(string? dataHome, string home) =>
        dataHome is not null && Path.IsPathFullyQualified(dataHome) ? dataHome : Path.Combine(home, ".local", "share");
}
