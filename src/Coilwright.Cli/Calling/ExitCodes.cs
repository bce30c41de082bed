using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>What the program tells the shell when it ends.</summary>
internal static class ExitCodes
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and a notice of severity stop was among the answers.</summary>
    public const int Stop = 1;

    /// <summary>Bad input, a wrong call, a path that cannot be read or written.</summary>
    public const int BadInput = 2;

    /// <summary>Something wrong inside the program, its own data included.</summary>
    public const int Internal = 3;

    /// <summary>Stopped by Ctrl-C.</summary>
    public const int Cancelled = 130;

    /// <summary>The code for faults.</summary>
    public static int Of(IEnumerable<Fault> faults) =>
        faults.Any(f => f.Code is FaultCodes.DataBroken or UsageCodes.Internal) ? Internal : BadInput;
}
