using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class GaugeReadings : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "GaugeReadings",
                columns: table => new
                {
                    ShopKey = table.Column<string>(type: "text", nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    Reading = table.Column<string>(type: "text", nullable: true),
                    Source = table.Column<string>(type: "text", nullable: false),
                    Flag = table.Column<string>(type: "text", nullable: true),
                    RecordedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    RecordedBy = table.Column<string>(type: "text", nullable: false),
                    BatchKey = table.Column<string>(type: "text", nullable: false),
                    Withdraws = table.Column<int>(type: "integer", nullable: true),
                    Why = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GaugeReadings", x => new { x.ShopKey, x.Number });
                    table.ForeignKey(
                        name: "FK_GaugeReadings_GaugeReadings_ShopKey_Withdraws",
                        columns: x => new { x.ShopKey, x.Withdraws },
                        principalTable: "GaugeReadings",
                        principalColumns: new[] { "ShopKey", "Number" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_GaugeReadings_Shops_ShopKey",
                        column: x => x.ShopKey,
                        principalTable: "Shops",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_GaugeReadings_BatchKey",
                table: "GaugeReadings",
                column: "BatchKey");

            migrationBuilder.CreateIndex(
                name: "IX_GaugeReadings_ShopKey_Withdraws",
                table: "GaugeReadings",
                columns: new[] { "ShopKey", "Withdraws" });

            // What happened is never rewritten, whoever asks and with whatever program: the function stands since Start.
            migrationBuilder.Sql(
                """
                CREATE TRIGGER "GaugeReadings_refuses_rewriting" BEFORE UPDATE OR DELETE OR TRUNCATE ON "GaugeReadings"
                FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting();
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "GaugeReadings");
        }
    }
}
