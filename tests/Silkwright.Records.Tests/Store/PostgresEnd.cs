[assembly: AssemblyFixture(typeof(Silkwright.Records.Tests.Store.PostgresEnd))]

namespace Silkwright.Records.Tests.Store;

/// <summary>Stops the server after the last test.</summary>
public sealed class PostgresEnd : IDisposable
{
    public void Dispose() => PostgresServer.Stop();
}
