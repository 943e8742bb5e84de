using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Migrations
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
                    ShopKey = table.Column<string>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: true),
                    Source = table.Column<string>(type: "TEXT", nullable: false),
                    RecordedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    RecordedBy = table.Column<string>(type: "TEXT", nullable: false),
                    Withdraws = table.Column<int>(type: "INTEGER", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: true)
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

            // What happened is never rewritten, whoever asks and with whatever program.
            foreach (var verb in (string[])["UPDATE", "DELETE"])
            {
                migrationBuilder.Sql(
                    $"""
                    CREATE TRIGGER "CoatExperience_refuses_{verb}" BEFORE {verb} ON "CoatExperience"
                    BEGIN SELECT RAISE(ABORT, 'CoatExperience is append-only: write a new entry that corrects the old one'); END;
                    """);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CoatExperience");
        }
    }
}
