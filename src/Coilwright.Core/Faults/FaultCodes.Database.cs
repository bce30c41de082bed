namespace Coilwright.Core.Faults;

// A shelf in a database.
public static partial class FaultCodes
{
    /// <summary>The address of the database cannot be read: the value is a name in it that is not understood, empty when it cannot be told; {missing} is a part that is not there.</summary>
    public const string DatabaseAddress = "database.address";

    /// <summary>No database server answers at that place.</summary>
    public const string DatabaseUnreachable = "database.unreachable";

    /// <summary>The database server went away in the middle.</summary>
    public const string DatabaseLost = "database.lost";

    /// <summary>The database server did not answer for as long as was waited.</summary>
    public const string DatabaseSlow = "database.slow";

    /// <summary>The database server does not let this user in: name, password or the server's own rules.</summary>
    public const string DatabaseRefused = "database.refused";

    /// <summary>The server has no database of that name.</summary>
    public const string DatabaseMissing = "database.missing";

    /// <summary>This user may not do that in the database.</summary>
    public const string DatabaseNoRights = "database.no-rights";

    /// <summary>The database takes no changes: a copy, or set so.</summary>
    public const string DatabaseReadOnly = "database.read-only";

    /// <summary>The database server's disk is full.</summary>
    public const string DatabaseFull = "database.full";

    /// <summary>The database server takes no more connections.</summary>
    public const string DatabaseCrowded = "database.crowded";

    /// <summary>The database holds something else under our name.</summary>
    public const string DatabaseNotOurs = "database.not-ours";

    /// <summary>The database cannot be used for another reason, as {reason} in the server's own words.</summary>
    public const string DatabaseOther = "database.other";

    /// <summary>What is in a database is not backed up or restored here, but with the server's own means.</summary>
    public const string DatabaseBackup = "database.backup";
}
