using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Silkwright.Records.Store;

/// <summary>Puts the records among a program's services.</summary>
public static class RecordsServices
{
    /// <summary>
    /// Adds an embedded store that is opened when first asked for. Call <see cref="SilkwrightStore.MigrateAsync"/> once before serving.
    /// </summary>
    public static IServiceCollection AddSilkwrightRecords(this IServiceCollection services, DataFolder folder)
    {
        services.TryAddSingleton(TimeProvider.System);
        return services
            .AddSingleton(s => new SilkwrightStore(folder, SilkwrightStore.SqliteOptions(folder), s.GetRequiredService<TimeProvider>()))
            .AddParts();
    }

    /// <summary>Adds a store that is already open.</summary>
    public static IServiceCollection AddSilkwrightRecords(this IServiceCollection services, SilkwrightStore store) =>
        services.AddSingleton(store).AddParts();

    private static IServiceCollection AddParts(this IServiceCollection services) => services
        .AddSingleton<IDbContextFactory<RecordsContext>>(s => s.GetRequiredService<SilkwrightStore>())
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Folder)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Shops)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Jobs)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Catalogues)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Films)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Screens)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().Gauging)
        .AddSingleton(s => s.GetRequiredService<SilkwrightStore>().CoatExperience);
}
