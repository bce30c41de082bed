namespace Coilwright.Core.Beads;

/// <summary>What a bead does in the piece. The maker's choice, never set by its shape.</summary>
public enum Role
{
    /// <summary>A bead that carries the look.</summary>
    Main,

    /// <summary>A bead that sets off the main ones.</summary>
    Accent,

    /// <summary>A small bead or disc between others.</summary>
    Spacer,

    /// <summary>A bead, often a tube, between clusters.</summary>
    Connector,

    /// <summary>The star of the piece, worn on the top of the wrist.</summary>
    Focal,
}
