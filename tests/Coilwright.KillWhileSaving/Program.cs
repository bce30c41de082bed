using System.Globalization;
using Coilwright.KillWhileSaving;

// write FOLDER, write-database ADDRESS: edits and saves until it is killed. check [KILLS [ADDRESS]]: starts such writers, kills them, and looks for what they were
// told was kept.
switch (args)
{
    case ["write", var folder]:
        return await Writer.RunAsync(new KillFolder(folder));
    case ["write-database", var address]:
        return await Writer.RunAsync(new KillDatabase(address));
    case ["check"] or ["check", _] or ["check", _, _]:
        var kills = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 200;
        var scratch = Directory.CreateTempSubdirectory("coilwright-kills-").FullName;
        try
        {
            var figures = await KillCheck.RunAsync(kills, args is [_, _, var database] ? new KillDatabase(database) : new KillFolder(scratch), Console.Out);
            await Console.Out.WriteLineAsync(figures.ToString());
            return figures.IsSound ? 0 : 1;
        }
        finally
        {
            Directory.Delete(scratch, recursive: true);
        }
    default:
        await Console.Error.WriteLineAsync("write FOLDER, write-database ADDRESS, or check [KILLS [ADDRESS]]");
        return 2;
}
