using System;
using System.Collections.Generic;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Clothwright.Storage.PostgreSql.Migrations
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
                    Id = table.Column<int>(type: "integer", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bench", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "swatches",
                columns: table => new
                {
                    Id = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    Title = table.Column<string>(type: "text", nullable: false),
                    WorksheetId = table.Column<string>(type: "text", nullable: true),
                    MeasuredOn = table.Column<DateOnly>(type: "date", nullable: true),
                    WarpYarnIds = table.Column<List<string>>(type: "text[]", nullable: false),
                    WeftYarnIds = table.Column<List<string>>(type: "text[]", nullable: false),
                    Weave = table.Column<string>(type: "text", nullable: false),
                    EndsPerCentimetre = table.Column<double>(type: "double precision", nullable: true),
                    PicksPerCentimetre = table.Column<double>(type: "double precision", nullable: true),
                    ReedWidthCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    WovenLengthCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    OffLoomWidthCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    OffLoomLengthCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    FinishedWidthCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    FinishedLengthCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    FinishedGrams = table.Column<double>(type: "double precision", nullable: true),
                    ThicknessMillimetres = table.Column<double>(type: "double precision", nullable: true),
                    Finishing = table.Column<string>(type: "text", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_swatches", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "weaving_log",
                columns: table => new
                {
                    Id = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    WorksheetId = table.Column<string>(type: "text", nullable: false),
                    Begun = table.Column<long>(type: "bigint", nullable: false),
                    OffsetMinutes = table.Column<int>(type: "integer", nullable: false),
                    Minutes = table.Column<double>(type: "double precision", nullable: true),
                    Work = table.Column<string>(type: "text", nullable: false),
                    PieceIndex = table.Column<int>(type: "integer", nullable: true),
                    Picks = table.Column<int>(type: "integer", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_weaving_log", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "worksheets",
                columns: table => new
                {
                    Id = table.Column<string>(type: "text", nullable: false),
                    Title = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    SavedAt = table.Column<long>(type: "bigint", nullable: false),
                    IsPutAway = table.Column<bool>(type: "boolean", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_worksheets", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "yarn_photos",
                columns: table => new
                {
                    Id = table.Column<string>(type: "text", nullable: false),
                    YarnId = table.Column<string>(type: "text", nullable: false),
                    AddedAt = table.Column<long>(type: "bigint", nullable: false),
                    WidthPixels = table.Column<int>(type: "integer", nullable: false),
                    HeightPixels = table.Column<int>(type: "integer", nullable: false),
                    Jpeg = table.Column<byte[]>(type: "bytea", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarn_photos", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "yarn_reservations",
                columns: table => new
                {
                    YarnId = table.Column<string>(type: "text", nullable: false),
                    WorksheetId = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Kilograms = table.Column<double>(type: "double precision", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarn_reservations", x => new { x.YarnId, x.WorksheetId });
                });

            migrationBuilder.CreateTable(
                name: "yarns",
                columns: table => new
                {
                    Id = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Count = table.Column<string>(type: "text", nullable: true),
                    CountSystem = table.Column<string>(type: "text", nullable: true),
                    Label = table.Column<string>(type: "text", nullable: true),
                    Tex = table.Column<double>(type: "double precision", nullable: true),
                    Construction = table.Column<string>(type: "text", nullable: false),
                    Colour = table.Column<string>(type: "text", nullable: false),
                    WrapsPerMetre = table.Column<double>(type: "double precision", nullable: true),
                    OfferForm = table.Column<string>(type: "text", nullable: true),
                    OfferNetKilograms = table.Column<double>(type: "double precision", nullable: true),
                    OfferPrice = table.Column<double>(type: "double precision", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_yarns", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "heddles",
                columns: table => new
                {
                    BenchId = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    SpacesPerMetre = table.Column<double>(type: "double precision", nullable: false),
                    Count = table.Column<int>(type: "integer", nullable: false)
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
                    BenchId = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    Id = table.Column<string>(type: "text", nullable: true),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    WeavingWidthMetres = table.Column<double>(type: "double precision", nullable: false),
                    Shafts = table.Column<int>(type: "integer", nullable: false),
                    Treadles = table.Column<int>(type: "integer", nullable: false),
                    Shed = table.Column<string>(type: "text", nullable: false),
                    RigidHeddles = table.Column<int>(type: "integer", nullable: false),
                    WarpBeams = table.Column<int>(type: "integer", nullable: false),
                    HeddlesPerShaft = table.Column<int>(type: "integer", nullable: false),
                    WasteMetres = table.Column<double>(type: "double precision", nullable: true)
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
                    BenchId = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    DentsPerMetre = table.Column<double>(type: "double precision", nullable: false)
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
                    BenchId = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    Id = table.Column<string>(type: "text", nullable: true),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    LongestWarpMetres = table.Column<double>(type: "double precision", nullable: true),
                    TurnCentimetres = table.Column<double>(type: "double precision", nullable: true),
                    SectionCentimetres = table.Column<double>(type: "double precision", nullable: true)
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
                    WorksheetId = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    SavedAt = table.Column<long>(type: "bigint", nullable: false),
                    Title = table.Column<string>(type: "text", nullable: false),
                    Document = table.Column<string>(type: "text", nullable: false),
                    RestoredFrom = table.Column<int>(type: "integer", nullable: true)
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
                    YarnId = table.Column<string>(type: "text", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    Form = table.Column<string>(type: "text", nullable: false),
                    GrossKilograms = table.Column<double>(type: "double precision", nullable: false),
                    TareKilograms = table.Column<double>(type: "double precision", nullable: false),
                    Lot = table.Column<string>(type: "text", nullable: true),
                    RelativeHumidity = table.Column<double>(type: "double precision", nullable: true),
                    Basis = table.Column<string>(type: "text", nullable: true)
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
                    YarnId = table.Column<string>(type: "text", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    FibreId = table.Column<string>(type: "text", nullable: false),
                    MassShare = table.Column<double>(type: "double precision", nullable: false)
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

            migrationBuilder.CreateIndex(
                name: "IX_yarn_photos_YarnId",
                table: "yarn_photos",
                column: "YarnId");
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
                name: "yarn_photos");

            migrationBuilder.DropTable(
                name: "yarn_reservations");

            migrationBuilder.DropTable(
                name: "bench");

            migrationBuilder.DropTable(
                name: "worksheets");

            migrationBuilder.DropTable(
                name: "yarns");
        }
    }
}
