// Tables as spreadsheets and people write them, and as nobody should.
#include "drive/importing/parts.hpp"
#include "drive/importing/table.hpp"
#include "unit/drive/bench_files.hpp"

#include <doctest/doctest.h>

#include <random>

using matchmark::drive::Column;
using matchmark::drive::column_named;
using matchmark::drive::PartsTable;
using matchmark::drive::read_parts;
using matchmark::drive::read_table;
using matchmark::drive::Table;

using Cells = std::vector<std::string>;

TEST_CASE("cells are read as RFC 4180 has them") {
    const Table table =
        read_table("a,b,c\r\n\"x, y\",\"say \"\"no\"\"\",\"two\nlines\"\r\n1,,\r\n");
    CHECK(table.problem.empty());
    REQUIRE(table.rows.size() == 3);
    CHECK(table.rows[1].cells == Cells{"x, y", "say \"no\"", "two lines"});
    CHECK(table.rows[1].line == 2);
    CHECK(table.rows[2].cells == Cells{"1", "", ""});
    CHECK(table.rows[2].line == 4);
}

TEST_CASE("the separator is the sign that parts most of the first line") {
    CHECK(read_table("a;b;c\n1,5;2;3\n").rows[1].cells == Cells{"1,5", "2", "3"});
    CHECK(read_table("a\tb\n1;2\t3\n").rows[1].cells == Cells{"1;2", "3"});
    CHECK(read_table("\"a;b;c\",d\nx,y\n").rows[1].cells == Cells{"x", "y"});
    CHECK(read_table("sep=;\na;b\n1;2\n").rows[1].cells == Cells{"1", "2"});
    CHECK(read_table("\xef\xbb\xbfname\nlid\n").rows[0].cells == Cells{"name"});
    CHECK(read_table("a,b\r1,2\r").rows[1].cells == Cells{"1", "2"});
}

TEST_CASE("what cannot be read says why and where") {
    CHECK(read_table("a,b\n1,\"open\n2,3\n").problem_line == 2);
    CHECK(read_table("a,b\n1,\"open\n2,3\n").rows.empty());
    CHECK(read_table("a,b\n\xff,2\n").problem_line == 2);
    CHECK(read_table(std::string("a,b\n\0,2\n", 8)).problem_line == 2);
    CHECK(read_table("\xff\xfe"
                     "a")
              .problem.find("UTF-16") != std::string::npos);
    CHECK(read_table("name\n" + std::string(1000, ',') + "\n").problem.find("500 cells") !=
          std::string::npos);
    std::string many = "name\n";
    for (int i = 0; i < 20001; ++i) {
        many += "x\n";
    }
    CHECK(read_table(many).problem.find("20000 rows") != std::string::npos);
    CHECK(read_table("").rows.empty());
    CHECK(read_table("\n\n,,\n").rows.empty());
}

TEST_CASE("any bytes give a table or a reason") {
    std::mt19937 random(7);
    const std::string signs = "\"\",;\t\n\r ab\xc3\xa4";
    for (int round = 0; round < 3000; ++round) {
        std::string text;
        for (std::size_t i = random() % 60; i > 0; --i) {
            text += signs[random() % signs.size()];
        }
        const Table table = read_table(text);
        CHECK((table.problem.empty() || table.rows.empty()));
    }
}

TEST_CASE("columns are known by many names") {
    CHECK(column_named("Name") == Column::name);
    CHECK(column_named("Part name") == Column::name);
    CHECK(column_named("QTY.") == Column::count);
    CHECK(column_named("Quantitty") == Column::count);
    CHECK(column_named("Torque (Nm)") == Column::torque);
    CHECK(column_named("Position [mm]") == Column::at);
    CHECK(column_named("x / mm") == Column::x);
    CHECK(column_named("supplier") == Column::none);
    CHECK(column_named("") == Column::none);
}

TEST_CASE("rows of one name are one thing with several places") {
    const PartsTable parts =
        read_parts(read_table("name,kind,face,x,y,torque (Nm)\nscrew,screw,top,5,5,0.5\n"
                              "screw,,top,\"95,5\",5,\nlid,,,,,\nscrew,bolt,,1,,\n"));
    REQUIRE(parts.problem.empty());
    REQUIRE(parts.parts.size() == 2);
    CHECK(parts.parts[0].count == 3);
    CHECK(parts.parts[0].torque == "0.5 Nm");
    REQUIRE(parts.parts[0].places.size() == 2);
    CHECK(parts.parts[0].places[1].x == doctest::Approx(95.5));
    CHECK(parts.parts[0].to_decide.size() == 2); // another kind, and half a place
}

TEST_CASE("a table of nothing we know is refused") {
    CHECK_FALSE(read_parts(read_table("supplier,price\nx,1\n")).problem.empty());
    CHECK_FALSE(read_parts(read_table("name\n")).problem.empty());
    CHECK(read_parts(read_table("name,price\nlid,1\n")).left_out == Cells{"price"});
}

TEST_CASE("a drive is read by its title, its name or its tool, with its size") {
    matchmark::test::Desk desk;
    desk.disk.files["p.csv"] = "name,kind,count,size,drive,torque\n"
                               "a,screw,4,M5x12,hexagon socket 4,5 Nm\n"
                               "b,screw,4,M5x16,hexagon key 4 mm,5 Nm\n"
                               "c,screw,4,M5x20,some socket 4,5 Nm\n"
                               "d,bolt,4,M8x20,nut driver 13,5 Nm\n";
    desk.run({"import", "p.csv"});
    CHECK(desk.out.find("4 x screw M5 x 12, hexagon 4\n") != std::string::npos);
    CHECK(desk.out.find("4 x screw M5 x 16, hexagon 4\n") != std::string::npos);
    CHECK(desk.out.find("its drive: the table says \"some socket 4\"") != std::string::npos);
    CHECK(desk.out.find("4 x bolt M8 x 20, hexagon-head 13\n") != std::string::npos);
}

TEST_CASE("a thing that the table puts in two others is asked about") {
    matchmark::test::Desk desk;
    desk.disk.files["parts.csv"] = "name,title,kind,in\ncage,cage,part,\nbox,box,part,\n"
                                   "lamp,lamp,part,cage/box\n";
    CHECK(desk.run({"import", "parts.csv", "-o", "thing.mmk"}) == 0);
    const std::string& device = desk.disk.files["thing.mmk"];
    CHECK(device.find("# decide: in \"cage/box\": a thing is in one other\n") != std::string::npos);
    CHECK(device.find("  in cage") == std::string::npos);
}

TEST_CASE("a cell of commas names nothing, and is asked about") {
    matchmark::test::Desk desk;
    desk.disk.files["parts.csv"] =
        "name,title,kind,count,holds,to\nlid-screws,lid screw,screw,2,\",,\",frame\n"
        "frame,frame,part,1,,\n";
    CHECK(desk.run({"import", "parts.csv", "-o", "thing.mmk"}) == 0);
    const std::string& device = desk.disk.files["thing.mmk"];
    CHECK(device.find("# decide: holds \",,\": nothing in the table is called so") !=
          std::string::npos);
    CHECK(device.find("holds  to") == std::string::npos);

    desk.disk.files["parts.csv"] =
        "name,title,kind,count,holds,to\nlid-screws,lid screw,screw,2,frame,\",\"\n"
        "frame,frame,part,1,,\n";
    CHECK(desk.run({"import", "parts.csv", "-o", "other.mmk"}) == 0);
    CHECK(desk.disk.files["other.mmk"].find(
              "# decide: holds \",\": nothing in the table is called so\n") != std::string::npos);
}
