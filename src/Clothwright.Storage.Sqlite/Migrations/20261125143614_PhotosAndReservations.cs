using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Clothwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class PhotosAndReservations : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Basis",
                table: "packages",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "yarn_photos",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    YarnId = table.Column<string>(type: "TEXT", nullable: false),
                    AddedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    WidthPixels = table.Column<int>(type: "INTEGER", nullable: false),
                    HeightPixels = table.Column<int>(type: "INTEGER", nullable: false),
                    Jpeg = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarn_photos", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "yarn_reservations",
                columns: table => new
                {
                    YarnId = table.Column<string>(type: "TEXT", nullable: false),
                    WorksheetId = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Kilograms = table.Column<double>(type: "REAL", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarn_reservations", x => new { x.YarnId, x.WorksheetId });
                });

            migrationBuilder.CreateIndex(
                name: "IX_yarn_photos_YarnId",
                table: "yarn_photos",
                column: "YarnId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "yarn_photos");

            migrationBuilder.DropTable(
                name: "yarn_reservations");

            migrationBuilder.DropColumn(
                name: "Basis",
                table: "packages");
        }
    }
}
