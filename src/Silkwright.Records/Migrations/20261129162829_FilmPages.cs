using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Silkwright.Records.Migrations
{
    /// <inheritdoc />
    public partial class FilmPages : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "Dpi",
                table: "JobFilms",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Page",
                table: "JobFilms",
                type: "INTEGER",
                nullable: false,
                defaultValue: 1);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Dpi",
                table: "JobFilms");

            migrationBuilder.DropColumn(
                name: "Page",
                table: "JobFilms");
        }
    }
}
