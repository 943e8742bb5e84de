using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Migrations
{
    /// <inheritdoc />
    public partial class Catalogue : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "CatalogueRevisions",
                columns: table => new
                {
                    Revision = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    SavedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SavedBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CatalogueRevisions", x => x.Revision);
                });

            // What happened is never rewritten, whoever asks and with whatever program.
            foreach (var verb in (string[])["UPDATE", "DELETE"])
            {
                migrationBuilder.Sql(
                    $"""
                    CREATE TRIGGER "CatalogueRevisions_refuses_{verb}" BEFORE {verb} ON "CatalogueRevisions"
                    BEGIN SELECT RAISE(ABORT, 'CatalogueRevisions is append-only: write a new entry that corrects the old one'); END;
                    """);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CatalogueRevisions");
        }
    }
}
