using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Postgres.Migrations
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
                    Hash = table.Column<string>(type: "text", nullable: false),
                    FileName = table.Column<string>(type: "text", nullable: false),
                    Bytes = table.Column<long>(type: "bigint", nullable: false),
                    StoredPath = table.Column<string>(type: "text", nullable: false),
                    AddedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    AddedBy = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Films", x => x.Hash);
                });

            migrationBuilder.CreateTable(
                name: "Shops",
                columns: table => new
                {
                    Key = table.Column<string>(type: "text", nullable: false),
                    AddedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shops", x => x.Key);
                });

            migrationBuilder.CreateTable(
                name: "FilmMeasurements",
                columns: table => new
                {
                    FilmHash = table.Column<string>(type: "text", nullable: false),
                    Options = table.Column<string>(type: "text", nullable: false),
                    MeasuringVersion = table.Column<string>(type: "text", nullable: false),
                    Json = table.Column<string>(type: "text", nullable: false),
                    MeasuredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
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
                    JobId = table.Column<string>(type: "text", nullable: false),
                    NameInJob = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    FilmHash = table.Column<string>(type: "text", nullable: false),
                    AttachedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    AttachedBy = table.Column<string>(type: "text", nullable: false)
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
                    Choice = table.Column<int>(type: "integer", nullable: false),
                    ShopKey = table.Column<string>(type: "text", nullable: false),
                    ChosenAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    ChosenBy = table.Column<string>(type: "text", nullable: false)
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
                    JobId = table.Column<string>(type: "text", nullable: false),
                    Revision = table.Column<int>(type: "integer", nullable: false),
                    ShopKey = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false),
                    DueDate = table.Column<DateOnly>(type: "date", nullable: true),
                    State = table.Column<string>(type: "text", nullable: false),
                    SavedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SavedBy = table.Column<string>(type: "text", nullable: false),
                    Why = table.Column<string>(type: "text", nullable: false)
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
                    Id = table.Column<string>(type: "text", nullable: false),
                    ShopKey = table.Column<string>(type: "text", nullable: false),
                    Frame = table.Column<string>(type: "text", nullable: false),
                    MeshCountPerCm = table.Column<double>(type: "double precision", nullable: false),
                    MeshThreadUm = table.Column<double>(type: "double precision", nullable: false),
                    MeshDyed = table.Column<bool>(type: "boolean", nullable: false),
                    MeshLot = table.Column<string>(type: "text", nullable: true),
                    TensionNPerCm = table.Column<double>(type: "double precision", nullable: true),
                    AddedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    AddedBy = table.Column<string>(type: "text", nullable: false),
                    IdempotencyKey = table.Column<string>(type: "text", nullable: false)
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
                    ShopKey = table.Column<string>(type: "text", nullable: false),
                    Revision = table.Column<int>(type: "integer", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false),
                    SavedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SavedBy = table.Column<string>(type: "text", nullable: false),
                    Why = table.Column<string>(type: "text", nullable: false)
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
                    ScreenId = table.Column<string>(type: "text", nullable: false),
                    Sequence = table.Column<int>(type: "integer", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    Fact = table.Column<string>(type: "text", nullable: false),
                    At = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    RecordedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    Person = table.Column<string>(type: "text", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: true),
                    IdempotencyKey = table.Column<string>(type: "text", nullable: false),
                    Corrects = table.Column<int>(type: "integer", nullable: true),
                    Why = table.Column<string>(type: "text", nullable: true)
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
            migrationBuilder.Sql(
                """
                CREATE FUNCTION refuse_rewriting() RETURNS trigger LANGUAGE plpgsql AS
                $$ BEGIN RAISE EXCEPTION '% is append-only: write a new entry that corrects the old one', TG_TABLE_NAME; END $$;
                """);
            foreach (var table in (string[])["ShopRevisions", "DefaultShops", "JobRevisions", "JobFilms", "Screens", "ScreenEvents"])
            {
                migrationBuilder.Sql(
                    $"""
                    CREATE TRIGGER "{table}_refuses_rewriting" BEFORE UPDATE OR DELETE OR TRUNCATE ON "{table}"
                    FOR EACH STATEMENT EXECUTE FUNCTION refuse_rewriting();
                    """);
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

            migrationBuilder.Sql("DROP FUNCTION refuse_rewriting();");
        }
    }
}
