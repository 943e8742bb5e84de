using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Migrations
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
                    ShopKey = table.Column<string>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Reading = table.Column<string>(type: "TEXT", nullable: true),
                    Source = table.Column<string>(type: "TEXT", nullable: false),
                    Flag = table.Column<string>(type: "TEXT", nullable: true),
                    RecordedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    RecordedBy = table.Column<string>(type: "TEXT", nullable: false),
                    BatchKey = table.Column<string>(type: "TEXT", nullable: false),
                    Withdraws = table.Column<int>(type: "INTEGER", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: true)
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

            // What happened is never rewritten, whoever asks and with whatever program.
            foreach (var verb in (string[])["UPDATE", "DELETE"])
            {
                migrationBuilder.Sql(
                    $"""
                    CREATE TRIGGER "GaugeReadings_refuses_{verb}" BEFORE {verb} ON "GaugeReadings"
                    BEGIN SELECT RAISE(ABORT, 'GaugeReadings is append-only: write a new entry that corrects the old one'); END;
                    """);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "GaugeReadings");
        }
    }
}
