using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Postgres.Migrations
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
                    Revision = table.Column<int>(type: "integer", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false),
                    SavedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SavedBy = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CatalogueRevisions", x => x.Revision);
                });

            // What happened is never rewritten, whoever asks and with whatever program: the function stands since Start.
            migrationBuilder.Sql(
                """
                CREATE TRIGGER "CatalogueRevisions_refuses_rewriting" BEFORE UPDATE OR DELETE OR TRUNCATE ON "CatalogueRevisions"
                FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting();
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CatalogueRevisions");
        }
    }
}
