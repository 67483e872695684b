// The real program makes a device of a table and a guide of an outline, and writes nothing else.
#include "program/workshop.hpp"
#include "unit/drive/bench_files.hpp"

using matchmark::test::Ran;
using matchmark::test::Workshop;

TEST_CASE("a table becomes a device, and what is open is listed") {
    Workshop shop;
    shop.put("parts.csv", "\xef\xbb\xbfname,type,qty,size,holds,to\r\nbody,,,,,\r\nlid,,,,,\r\n"
                          "lid-screws,screw,4,M3x8,lid,body\r\ngizmo,thingamajig,,,,\r\n");
    const Ran made = shop.run({"import", "parts.csv", "--name", "kettle", "-o", "kettle.mmk"});
    CHECK(made.code == 0);
    CHECK(made.told("decide: its kind: the table says \"thingamajig\""));
    CHECK(made.told("1 place to decide"));
    CHECK(shop.run({"check", "kettle.mmk"}).code == 0);
    CHECK(shop.text("kettle.mmk").find("4 x screw M3 x 8") != std::string::npos);
    const Ran again = shop.run({"import", "parts.csv", "--name", "kettle", "-o", "kettle.mmk"});
    CHECK(again.code == 2);
    CHECK(again.complained("is there already; nothing is written"));
    const Ran shown = shop.run({"import", "parts.csv"});
    CHECK(shown.code == 0);
    CHECK(shown.told("device parts \"Parts\""));
    CHECK(shown.complained("to decide"));
    const Ran json = shop.run({"import", "parts.csv", "-o", "other.mmk", "--json"});
    CHECK(json.told("\"question\": \"its kind"));
    CHECK(shop.names() == std::vector<std::string>{"kettle.mmk", "other.mmk", "parts.csv"});
}

TEST_CASE("an outline becomes a guide for its device") {
    Workshop shop;
    shop.put("lamp.mmk", matchmark::test::device_text);
    shop.put("open.md", "# Open the lamp\n\n## Tools\n\n- hexalobular driver 10\n\n## Open\n\n"
                        "- Undo the lid screws\n- Remove the lid\n");
    CHECK(shop.run({"import", "open.md", "-o", "x.mmk"}).code == 2);
    const Ran made = shop.run({"import", "open.md", "--for", "lamp.mmk", "-o", "open.mmk"});
    CHECK(made.code == 0);
    CHECK(made.told("what the work is for"));
    CHECK(shop.run({"check", "open.mmk"}).code == 0);
}

TEST_CASE("what cannot be imported leaves nothing behind") {
    Workshop shop;
    shop.put("bad.csv", "name,kind\nlid,\"open\n");
    shop.put("none.csv", "supplier\nx\n");
    shop.put("binary.csv", std::string("name\n\0\n", 7));
    shop.put("lamp.mmk", "device lamp\npart a in b\n");
    shop.put("open.md", "# Open\n");
    for (const std::vector<std::string>& arguments : std::vector<std::vector<std::string>>{
             {"import"},
             {"import", "missing.csv"},
             {"import", "lamp.mmk"},
             {"import", "bad.csv", "-o", "x.mmk"},
             {"import", "none.csv", "-o", "x.mmk"},
             {"import", "binary.csv", "-o", "x.mmk"},
             {"import", "none.csv", "--name", "3 x", "-o", "x.mmk"},
             {"import", "none.csv", "--for", "lamp.mmk", "-o", "x.mmk"},
             {"import", "open.md", "--for", "lamp.mmk", "-o", "x.mmk"},
             {"import", "open.md", "--for", "missing.mmk", "-o", "x.mmk"}}) {
        CAPTURE(arguments);
        const Ran ran = shop.run(arguments);
        CHECK(ran.code == 2);
        CHECK_FALSE(ran.err.empty());
    }
    CHECK(shop.run({"import", "bad.csv"}).complained("line 2: a quote opens here"));
    CHECK_FALSE(shop.has("x.mmk"));
}
