using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Clothwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "bench",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bench", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "swatches",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    WorksheetId = table.Column<string>(type: "TEXT", nullable: true),
                    MeasuredOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    WarpYarnIds = table.Column<string>(type: "TEXT", nullable: false),
                    WeftYarnIds = table.Column<string>(type: "TEXT", nullable: false),
                    Weave = table.Column<string>(type: "TEXT", nullable: false),
                    EndsPerCentimetre = table.Column<double>(type: "REAL", nullable: true),
                    PicksPerCentimetre = table.Column<double>(type: "REAL", nullable: true),
                    ReedWidthCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    WovenLengthCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    OffLoomWidthCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    OffLoomLengthCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    FinishedWidthCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    FinishedLengthCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    FinishedGrams = table.Column<double>(type: "REAL", nullable: true),
                    ThicknessMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Finishing = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_swatches", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "weaving_log",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    WorksheetId = table.Column<string>(type: "TEXT", nullable: false),
                    Begun = table.Column<long>(type: "INTEGER", nullable: false),
                    OffsetMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    Minutes = table.Column<double>(type: "REAL", nullable: true),
                    Work = table.Column<string>(type: "TEXT", nullable: false),
                    PieceIndex = table.Column<int>(type: "INTEGER", nullable: true),
                    Picks = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_weaving_log", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "worksheets",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    SavedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    IsPutAway = table.Column<bool>(type: "INTEGER", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_worksheets", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "yarns",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Count = table.Column<string>(type: "TEXT", nullable: true),
                    CountSystem = table.Column<string>(type: "TEXT", nullable: true),
                    Label = table.Column<string>(type: "TEXT", nullable: true),
                    Tex = table.Column<double>(type: "REAL", nullable: true),
                    Construction = table.Column<string>(type: "TEXT", nullable: false),
                    Colour = table.Column<string>(type: "TEXT", nullable: false),
                    WrapsPerMetre = table.Column<double>(type: "REAL", nullable: true),
                    OfferForm = table.Column<string>(type: "TEXT", nullable: true),
                    OfferNetKilograms = table.Column<double>(type: "REAL", nullable: true),
                    OfferPrice = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarns", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "heddles",
                columns: table => new
                {
                    BenchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    SpacesPerMetre = table.Column<double>(type: "REAL", nullable: false),
                    Count = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_heddles", x => new { x.BenchId, x.Place });
                    table.ForeignKey(
                        name: "FK_heddles_bench_BenchId",
                        column: x => x.BenchId,
                        principalTable: "bench",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "looms",
                columns: table => new
                {
                    BenchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    Id = table.Column<string>(type: "TEXT", nullable: true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    WeavingWidthMetres = table.Column<double>(type: "REAL", nullable: false),
                    Shafts = table.Column<int>(type: "INTEGER", nullable: false),
                    Treadles = table.Column<int>(type: "INTEGER", nullable: false),
                    Shed = table.Column<string>(type: "TEXT", nullable: false),
                    RigidHeddles = table.Column<int>(type: "INTEGER", nullable: false),
                    WarpBeams = table.Column<int>(type: "INTEGER", nullable: false),
                    HeddlesPerShaft = table.Column<int>(type: "INTEGER", nullable: false),
                    WasteMetres = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_looms", x => new { x.BenchId, x.Place });
                    table.ForeignKey(
                        name: "FK_looms_bench_BenchId",
                        column: x => x.BenchId,
                        principalTable: "bench",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "reeds",
                columns: table => new
                {
                    BenchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    DentsPerMetre = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_reeds", x => new { x.BenchId, x.Place });
                    table.ForeignKey(
                        name: "FK_reeds_bench_BenchId",
                        column: x => x.BenchId,
                        principalTable: "bench",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "warping_tools",
                columns: table => new
                {
                    BenchId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    Id = table.Column<string>(type: "TEXT", nullable: true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    LongestWarpMetres = table.Column<double>(type: "REAL", nullable: true),
                    TurnCentimetres = table.Column<double>(type: "REAL", nullable: true),
                    SectionCentimetres = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_warping_tools", x => new { x.BenchId, x.Place });
                    table.ForeignKey(
                        name: "FK_warping_tools_bench_BenchId",
                        column: x => x.BenchId,
                        principalTable: "bench",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "worksheet_saves",
                columns: table => new
                {
                    WorksheetId = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    SavedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    RestoredFrom = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_worksheet_saves", x => new { x.WorksheetId, x.Version });
                    table.ForeignKey(
                        name: "FK_worksheet_saves_worksheets_WorksheetId",
                        column: x => x.WorksheetId,
                        principalTable: "worksheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "packages",
                columns: table => new
                {
                    YarnId = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    Form = table.Column<string>(type: "TEXT", nullable: false),
                    GrossKilograms = table.Column<double>(type: "REAL", nullable: false),
                    TareKilograms = table.Column<double>(type: "REAL", nullable: false),
                    Lot = table.Column<string>(type: "TEXT", nullable: true),
                    RelativeHumidity = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_packages", x => new { x.YarnId, x.Place });
                    table.ForeignKey(
                        name: "FK_packages_yarns_YarnId",
                        column: x => x.YarnId,
                        principalTable: "yarns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "yarn_fibres",
                columns: table => new
                {
                    YarnId = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    FibreId = table.Column<string>(type: "TEXT", nullable: false),
                    MassShare = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarn_fibres", x => new { x.YarnId, x.Place });
                    table.ForeignKey(
                        name: "FK_yarn_fibres_yarns_YarnId",
                        column: x => x.YarnId,
                        principalTable: "yarns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_weaving_log_WorksheetId_Begun",
                table: "weaving_log",
                columns: new[] { "WorksheetId", "Begun" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "heddles");

            migrationBuilder.DropTable(
                name: "looms");

            migrationBuilder.DropTable(
                name: "packages");

            migrationBuilder.DropTable(
                name: "reeds");

            migrationBuilder.DropTable(
                name: "swatches");

            migrationBuilder.DropTable(
                name: "warping_tools");

            migrationBuilder.DropTable(
                name: "weaving_log");

            migrationBuilder.DropTable(
                name: "worksheet_saves");

            migrationBuilder.DropTable(
                name: "yarn_fibres");

            migrationBuilder.DropTable(
                name: "bench");

            migrationBuilder.DropTable(
                name: "worksheets");

            migrationBuilder.DropTable(
                name: "yarns");
        }
    }
}
