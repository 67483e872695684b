// Bytes that are no messages: each costs itself at most, and the server goes on.
#include "drive/commands.hpp"
#include "serve/editor/protocol.hpp"
#include "serve/editor/stream.hpp"

#include <doctest/doctest.h>
#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <sstream>

using namespace matchmark;
using nlohmann::json;

namespace {

std::string framed(const std::string& body) {
    return fmt::format("Content-Length: {}\r\n\r\n{}", body.size(), body);
}

const std::string initialize =
    framed(R"({"jsonrpc":"2.0","id":1,"method":"initialize","params":{"capabilities":{}}})");
const std::string shutdown = framed(R"({"jsonrpc":"2.0","id":99,"method":"shutdown"})");
const std::string leave = framed(R"({"jsonrpc":"2.0","method":"exit"})");

struct Talk {
    int code = 0;
    std::vector<json> answers;

    // The error code of the answer to this id; 0 when it is a result, 1 when there is none.
    [[nodiscard]] int error_of(const json& id) const {
        for (const json& answer : answers) {
            if (answer.contains("id") && answer["id"] == id)
                return answer.contains("error") ? answer["error"]["code"].get<int>() : 0;
        }
        return 1;
    }
};

Talk talk(const std::string& said) {
    MapDisk disk;
    std::istringstream in(said);
    std::ostringstream out;
    std::ostringstream err;
    drive::Terminal terminal{disk, in, out, err};
    Talk result;
    result.code = drive::serve_editor({}, terminal);
    std::istringstream answers(out.str());
    while (const auto body = serve::read_body(answers))
        result.answers.push_back(json::parse(body->text));
    return result;
}

} // namespace

TEST_CASE("the start and the end of a talk") {
    const Talk well = talk(initialize + shutdown + leave);
    CHECK(well.code == 0);
    CHECK(well.error_of(1) == 0);
    CHECK(well.error_of(99) == 0);
    CHECK(talk(initialize + leave).code == 1); // without `shutdown`
    CHECK(talk("").code == 1);
}

TEST_CASE("questions out of order, unknown or without what they need have their codes") {
    const Talk answers = talk(
        framed(R"({"jsonrpc":"2.0","id":"a","method":"textDocument/hover","params":{}})") +
        initialize + initialize +
        framed(R"({"jsonrpc":"2.0","id":2,"method":"textDocument/hover","params":{}})") +
        framed(R"({"jsonrpc":"2.0","id":3,"method":"no/such/thing"})") +
        framed(R"({"jsonrpc":"2.0","id":4,"method":"textDocument/hover","params":7})") +
        framed(R"({"jsonrpc":"2.0","id":5})") + framed(R"([1,2,3])") + framed("null") +
        framed(R"({"jsonrpc":"2.0","id":6,"result":null})") + shutdown +
        framed(R"({"jsonrpc":"2.0","id":7,"method":"workspace/symbol","params":{"query":""}})") +
        leave);
    CHECK(answers.code == 0);
    CHECK(answers.error_of("a") == -32002);
    CHECK(answers.error_of(2) == -32602);
    CHECK(answers.error_of(3) == -32601);
    CHECK(answers.error_of(4) == -32602);
    CHECK(answers.error_of(5) == -32600);
    CHECK(answers.error_of(6) == 1);
    CHECK(answers.error_of(7) == -32600);
    CHECK(answers.error_of(nullptr) == -32600);
}

TEST_CASE("after bytes that are no message the next one is answered") {
    const std::vector<std::string> slips = {
        framed("{\"jsonrpc\":"),
        framed(std::string("\xFF\xFE\x00\x01", 4)),
        framed(std::string(100000, '[')),
        framed(R"({"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":3}})"),
        framed(R"({"jsonrpc":"2.0","method":"textDocument/didChange",)"
               R"("params":{"contentChanges":[{"range":1}]}})"),
        framed(R"({"jsonrpc":"2.0","id":{},"method":"x"})"),
        "Content-Length: 5\r\n\r\n{\"jsonrpc\":\"2.0\"}", // shorter than it is
        "Content-Length: twelve\r\n\r\n",
        "Content-Length: -3\r\n\r\n",
        "Content-Length: 99999999999999999999999\r\n\r\n",
        "Nonsense: 1\r\n\r\n",
        "\r\n\r\n\n\n",
        std::string(20000, 'x') + "\r\n",
    };
    for (const std::string& slip : slips) {
        CAPTURE(slip.substr(0, 60));
        const Talk answers = talk(initialize + slip + shutdown + leave);
        CHECK(answers.error_of(1) == 0);
        CHECK(answers.error_of(99) == 0);
        CHECK(answers.code == 0);
    }
}

TEST_CASE("a message that is too long is skipped and told") {
    const std::size_t size = serve::longest_message + 10;
    const Talk answers = talk(initialize + fmt::format("Content-Length: {}\r\n\r\n", size) +
                              std::string(size, ' ') + shutdown + leave);
    CHECK(answers.error_of(nullptr) == -32600);
    CHECK(answers.error_of(99) == 0);
}

TEST_CASE("a length past the end of the stream ends the talk") {
    const Talk answers = talk(initialize + "Content-Length: 5000\r\n\r\n{}");
    CHECK(answers.error_of(1) == 0);
    CHECK(answers.code == 1);
}

TEST_CASE("a question that is taken back before its turn is answered so") {
    const std::string slow =
        framed(R"({"jsonrpc":"2.0","id":2,"method":"workspace/symbol","params":{"query":"a"}})");
    const Talk answers =
        talk(initialize + slow + framed(R"({"jsonrpc":"2.0","id":3,"method":"workspace/symbol"})") +
             framed(R"({"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":3}})") +
             framed(R"({"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":"none"}})") +
             framed(R"({"jsonrpc":"2.0","method":"$/cancelRequest"})") + shutdown + leave);
    const int code = answers.error_of(3); // it may have had its turn
    CHECK((code == 0 || code == -32800));
    CHECK(answers.error_of(99) == 0);
}

TEST_CASE("a message nested without end is not taken apart") {
    const auto nested = [](std::size_t depth) {
        return R"({"id":1,"method":"x","params":)" + std::string(depth - 1, '[') +
               std::string(depth - 1, ']') + "}";
    };
    CHECK(std::holds_alternative<serve::Message>(serve::read_message(nested(100))));
    const auto deep = serve::read_message(nested(101));
    REQUIRE(std::holds_alternative<serve::Malformed>(deep));
    CHECK(std::get<serve::Malformed>(deep).problem.message == "this is nested too deep");
    const std::string text =
        R"({"id":1,"method":"x","params":{"newName":"\")" + std::string(200, '[') + R"("}})";
    CHECK(std::holds_alternative<serve::Message>(serve::read_message(text)));
}
