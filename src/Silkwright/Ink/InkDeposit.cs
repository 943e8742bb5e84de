namespace Silkwright.Ink;

/// <summary>Ink laid and used.</summary>
public static class InkDeposit
{
    public static InkResult Of(InkCase print) =>
        throw new NotImplementedException();
}
