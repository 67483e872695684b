# Writes C++ that carries the text of files inside the program, or that names every rule.
#
#   cmake -DKIND=parts|pages|templates|catalogues|rules -DLIST=FILE -DROOT=FOLDER -DOUTPUT=FILE -P embed.cmake
#
# LIST holds one path a line. Called by CMakeLists.txt.

file(STRINGS ${LIST} files ENCODING UTF-8)
list(SORT files)

# A text as raw string literals, each below 16 kB (a limit of some compilers), cut after a line end.
function(literals text result)
  set(delimiter "mmk_text")
  string(FIND "${text}" ")${delimiter}\"" clash)
  if(NOT clash EQUAL -1)
    message(FATAL_ERROR "a text to embed contains the delimiter )${delimiter}\"")
  endif()
  set(limit 15000)
  set(pieces "")
  string(LENGTH "${text}" length)
  while(length GREATER limit)
    string(SUBSTRING "${text}" 0 ${limit} head)
    string(FIND "${head}" "\n" cut REVERSE)
    math(EXPR cut "${cut} + 1")
    if(cut EQUAL 0)
      message(FATAL_ERROR "a line of more than ${limit} bytes cannot be embedded")
    endif()
    string(SUBSTRING "${text}" 0 ${cut} head)
    string(SUBSTRING "${text}" ${cut} -1 text)
    string(APPEND pieces "R\"${delimiter}(${head})${delimiter}\"\n")
    string(LENGTH "${text}" length)
  endwhile()
  string(APPEND pieces "R\"${delimiter}(${text})${delimiter}\"")
  set(${result} "${pieces}" PARENT_SCOPE)
endfunction()

set(head "// Written by compiler/source/embed.cmake; do not edit.\n")
list(LENGTH files count)

if(KIND STREQUAL "rules")
  set(declarations "")
  set(entries "")
  foreach(file IN LISTS files)
    get_filename_component(name ${file} NAME_WE)
    string(APPEND declarations "extern const Rule ${name};\n")
    string(APPEND entries "    &rules::${name},\n")
  endforeach()
  set(body "#include \"check/rule.hpp\"

#include <array>
#include <span>

namespace matchmark::check::rules {
${declarations}} // namespace matchmark::check::rules

namespace matchmark::check {

std::span<const Rule* const> all_rules() {
    static constexpr std::array<const Rule*, ${count}> table{
${entries}    };
    return table;
}

} // namespace matchmark::check
")
else()
  set(entries "")
  foreach(file IN LISTS files)
    if(KIND MATCHES "^(parts|catalogues)$")
      file(RELATIVE_PATH name ${ROOT} ${file})
    else()
      get_filename_component(name ${file} NAME_WE)
      string(REPLACE "_" "-" name ${name})
    endif()
    file(READ ${file} text)
    literals("${text}" pieces)
    string(APPEND entries "    {\"${name}\",\n${pieces}sv},\n")
  endforeach()
  if(KIND STREQUAL "parts")
    set(function_name parts_library)
  elseif(KIND STREQUAL "templates")
    set(function_name templates)
  elseif(KIND STREQUAL "catalogues")
    set(function_name catalogues)
  else()
    set(function_name rule_pages)
  endif()
  set(body "#include \"source/embedded.hpp\"

#include <array>

namespace matchmark {

std::span<const EmbeddedText> ${function_name}() {
    using namespace std::string_view_literals;
    static constexpr std::array<EmbeddedText, ${count}> table{{
${entries}    }};
    return table;
}

} // namespace matchmark
")
endif()

file(WRITE ${OUTPUT} "${head}${body}")
