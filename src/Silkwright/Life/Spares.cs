namespace Silkwright.Life;

/// <summary>How many spare screens pay.</summary>
public static class Spares
{
    public static SparesAdvice Advise(LifeResult life, SpareCosts costs) =>
        throw new NotImplementedException();
}
