using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Migrations
{
    /// <inheritdoc />
    public partial class Start : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Films",
                columns: table => new
                {
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    FileName = table.Column<string>(type: "TEXT", nullable: false),
                    Bytes = table.Column<long>(type: "INTEGER", nullable: false),
                    StoredPath = table.Column<string>(type: "TEXT", nullable: false),
                    AddedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    AddedBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Films", x => x.Hash);
                });

            migrationBuilder.CreateTable(
                name: "Shops",
                columns: table => new
                {
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    AddedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shops", x => x.Key);
                });

            migrationBuilder.CreateTable(
                name: "FilmMeasurements",
                columns: table => new
                {
                    FilmHash = table.Column<string>(type: "TEXT", nullable: false),
                    Options = table.Column<string>(type: "TEXT", nullable: false),
                    MeasuringVersion = table.Column<string>(type: "TEXT", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    MeasuredAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FilmMeasurements", x => new { x.FilmHash, x.Options, x.MeasuringVersion });
                    table.ForeignKey(
                        name: "FK_FilmMeasurements_Films_FilmHash",
                        column: x => x.FilmHash,
                        principalTable: "Films",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "JobFilms",
                columns: table => new
                {
                    JobId = table.Column<string>(type: "TEXT", nullable: false),
                    NameInJob = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    FilmHash = table.Column<string>(type: "TEXT", nullable: false),
                    AttachedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    AttachedBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_JobFilms", x => new { x.JobId, x.NameInJob, x.Version });
                    table.ForeignKey(
                        name: "FK_JobFilms_Films_FilmHash",
                        column: x => x.FilmHash,
                        principalTable: "Films",
                        principalColumn: "Hash",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DefaultShops",
                columns: table => new
                {
                    Choice = table.Column<int>(type: "INTEGER", nullable: false),
                    ShopKey = table.Column<string>(type: "TEXT", nullable: false),
                    ChosenAt = table.Column<long>(type: "INTEGER", nullable: false),
                    ChosenBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DefaultShops", x => x.Choice);
                    table.ForeignKey(
                        name: "FK_DefaultShops_Shops_ShopKey",
                        column: x => x.ShopKey,
                        principalTable: "Shops",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "JobRevisions",
                columns: table => new
                {
                    JobId = table.Column<string>(type: "TEXT", nullable: false),
                    Revision = table.Column<int>(type: "INTEGER", nullable: false),
                    ShopKey = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    DueDate = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    SavedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SavedBy = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_JobRevisions", x => new { x.JobId, x.Revision });
                    table.ForeignKey(
                        name: "FK_JobRevisions_Shops_ShopKey",
                        column: x => x.ShopKey,
                        principalTable: "Shops",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Screens",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    ShopKey = table.Column<string>(type: "TEXT", nullable: false),
                    Frame = table.Column<string>(type: "TEXT", nullable: false),
                    MeshCountPerCm = table.Column<double>(type: "REAL", nullable: false),
                    MeshThreadUm = table.Column<double>(type: "REAL", nullable: false),
                    MeshDyed = table.Column<bool>(type: "INTEGER", nullable: false),
                    MeshLot = table.Column<string>(type: "TEXT", nullable: true),
                    TensionNPerCm = table.Column<double>(type: "REAL", nullable: true),
                    AddedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    AddedBy = table.Column<string>(type: "TEXT", nullable: false),
                    IdempotencyKey = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Screens", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Screens_Shops_ShopKey",
                        column: x => x.ShopKey,
                        principalTable: "Shops",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ShopRevisions",
                columns: table => new
                {
                    ShopKey = table.Column<string>(type: "TEXT", nullable: false),
                    Revision = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    SavedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SavedBy = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShopRevisions", x => new { x.ShopKey, x.Revision });
                    table.ForeignKey(
                        name: "FK_ShopRevisions_Shops_ShopKey",
                        column: x => x.ShopKey,
                        principalTable: "Shops",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ScreenEvents",
                columns: table => new
                {
                    ScreenId = table.Column<string>(type: "TEXT", nullable: false),
                    Sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Fact = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    RecordedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    IdempotencyKey = table.Column<string>(type: "TEXT", nullable: false),
                    Corrects = table.Column<int>(type: "INTEGER", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ScreenEvents", x => new { x.ScreenId, x.Sequence });
                    table.ForeignKey(
                        name: "FK_ScreenEvents_ScreenEvents_ScreenId_Corrects",
                        columns: x => new { x.ScreenId, x.Corrects },
                        principalTable: "ScreenEvents",
                        principalColumns: new[] { "ScreenId", "Sequence" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ScreenEvents_Screens_ScreenId",
                        column: x => x.ScreenId,
                        principalTable: "Screens",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_DefaultShops_ShopKey",
                table: "DefaultShops",
                column: "ShopKey");

            migrationBuilder.CreateIndex(
                name: "IX_JobFilms_FilmHash",
                table: "JobFilms",
                column: "FilmHash");

            migrationBuilder.CreateIndex(
                name: "IX_JobRevisions_ShopKey",
                table: "JobRevisions",
                column: "ShopKey");

            migrationBuilder.CreateIndex(
                name: "IX_ScreenEvents_IdempotencyKey",
                table: "ScreenEvents",
                column: "IdempotencyKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ScreenEvents_ScreenId_Corrects",
                table: "ScreenEvents",
                columns: new[] { "ScreenId", "Corrects" });

            migrationBuilder.CreateIndex(
                name: "IX_Screens_IdempotencyKey",
                table: "Screens",
                column: "IdempotencyKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Screens_ShopKey",
                table: "Screens",
                column: "ShopKey");

            // What happened is never rewritten, whoever asks and with whatever program.
            foreach (var table in (string[])["ShopRevisions", "DefaultShops", "JobRevisions", "JobFilms", "Screens", "ScreenEvents"])
            {
                foreach (var verb in (string[])["UPDATE", "DELETE"])
                {
                    migrationBuilder.Sql(
                        $"""
                        CREATE TRIGGER "{table}_refuses_{verb}" BEFORE {verb} ON "{table}"
                        BEGIN SELECT RAISE(ABORT, '{table} is append-only: write a new entry that corrects the old one'); END;
                        """);
                }
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "DefaultShops");

            migrationBuilder.DropTable(
                name: "FilmMeasurements");

            migrationBuilder.DropTable(
                name: "JobFilms");

            migrationBuilder.DropTable(
                name: "JobRevisions");

            migrationBuilder.DropTable(
                name: "ScreenEvents");

            migrationBuilder.DropTable(
                name: "ShopRevisions");

            migrationBuilder.DropTable(
                name: "Films");

            migrationBuilder.DropTable(
                name: "Screens");

            migrationBuilder.DropTable(
                name: "Shops");
        }
    }
}
