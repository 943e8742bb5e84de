using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class CoatExperience : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "CoatExperience",
                columns: table => new
                {
                    ShopKey = table.Column<string>(type: "text", nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: true),
                    Source = table.Column<string>(type: "text", nullable: false),
                    RecordedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    RecordedBy = table.Column<string>(type: "text", nullable: false),
                    Withdraws = table.Column<int>(type: "integer", nullable: true),
                    Why = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CoatExperience", x => new { x.ShopKey, x.Number });
                    table.ForeignKey(
                        name: "FK_CoatExperience_CoatExperience_ShopKey_Withdraws",
                        columns: x => new { x.ShopKey, x.Withdraws },
                        principalTable: "CoatExperience",
                        principalColumns: new[] { "ShopKey", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoatExperience_Shops_ShopKey",
                        column: x => x.ShopKey,
                        principalTable: "Shops",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_CoatExperience_ShopKey_Withdraws",
                table: "CoatExperience",
                columns: new[] { "ShopKey", "Withdraws" });

            // What happened is never rewritten, whoever asks and with whatever program: the function stands since Start.
            migrationBuilder.Sql(
                """
                CREATE TRIGGER "CoatExperience_refuses_rewriting" BEFORE UPDATE OR DELETE OR TRUNCATE ON "CoatExperience"
                FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting();
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CoatExperience");
        }
    }
}
