namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="StartWords"/>.</summary>
internal static class EnglishBenchStart
{
    internal static StartWords Make() => new()
    {
        OpenAt = "Coilwright's bench is open at {address}",
        ToStop = "Only this machine can reach it. Ctrl+C closes it.",
        PortTaken = "Port {port} is in use. Ask for another with --port, or leave it out and a free one is taken.",
        BadOption = "\"{option}\" was not understood. The options are --port with a number from 0 to 65535, and --shelf with the folder that your pieces are kept in or --database with the address of the database.",
        TwoPlaces = "Pieces are kept in one place. Name a folder with --shelf or a database with --database, not both.",
    };
}
