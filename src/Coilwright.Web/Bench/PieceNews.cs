namespace Coilwright.Web.Bench;

/// <summary>Tells every open bench when a piece went on, so that two windows on one piece show the same.</summary>
public sealed class PieceNews
{
    /// <summary>A piece has a new state: its name and the state's number. Raised on the thread that kept it.</summary>
    public event Action<Guid, long>? Kept;

    /// <summary>Everything on the shelf was replaced. Raised on the thread that did it.</summary>
    public event Action? Replaced;

    /// <summary>Says that everything was replaced.</summary>
    public void SayAll() => Replaced?.Invoke();

    /// <summary>Says that a state was kept.</summary>
    public void Say(Guid piece, long revision) => Kept?.Invoke(piece, revision);
}
