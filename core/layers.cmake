# The layers of the program, enforced at compile time.
#
# rangeline_layer(<name> LINKS <targets...> SOURCES <files...>) makes one static
# library out of the current folder. Its headers are reached as "<name>/x.h" through
# an include root of its own (a folder holding one link to the source folder), so
# including a header of a layer that is not linked does not compile.

add_library(rangeline_flags INTERFACE)
target_compile_options(rangeline_flags INTERFACE
  -Wall -Wextra -Wpedantic -Wconversion -Wshadow)
# Qt's macro "slots" would rename the rack slots of an oven.
target_compile_definitions(rangeline_flags INTERFACE QT_NO_KEYWORDS)
if(RANGELINE_WERROR)
  target_compile_options(rangeline_flags INTERFACE -Werror)
endif()
if(CMAKE_CXX_COMPILER_ID STREQUAL GNU)
  # g++ 12 and 13 warn of overlapping copies inside std::string's operator+ (GCC bug 105651). What
  # only the optimizer warns of depends on what it inlined, so it is said but fails no build.
  target_compile_options(rangeline_flags INTERFACE -Wno-restrict)
  foreach(warning array-bounds dangling-pointer free-nonheap-object maybe-uninitialized
          null-dereference stringop-overflow stringop-overread)
    target_compile_options(rangeline_flags INTERFACE -Wno-error=${warning})
  endforeach()
endif()
if(RANGELINE_SANITIZE)
  target_compile_options(rangeline_flags INTERFACE
    -fsanitize=address,undefined -fno-sanitize-recover=undefined -fno-omit-frame-pointer)
  target_link_options(rangeline_flags INTERFACE -fsanitize=address,undefined)
endif()

if(RANGELINE_FUZZ)
  target_compile_options(rangeline_flags INTERFACE
    -fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=undefined)
  target_link_options(rangeline_flags INTERFACE -fsanitize=address,undefined)
endif()

function(rangeline_layer name)
  cmake_parse_arguments(LAYER "" "" "LINKS;PRIVATE_LINKS;SOURCES" ${ARGN})
  set(root ${CMAKE_BINARY_DIR}/include-roots/${name})
  file(MAKE_DIRECTORY ${root})
  file(CREATE_LINK ${CMAKE_CURRENT_SOURCE_DIR} ${root}/${name} SYMBOLIC)
  if(LAYER_SOURCES)
    add_library(rangeline_${name} STATIC ${LAYER_SOURCES})
    target_include_directories(rangeline_${name} PUBLIC ${root})
    target_link_libraries(rangeline_${name} PUBLIC ${LAYER_LINKS}
      PRIVATE rangeline_flags ${LAYER_PRIVATE_LINKS})
  else()
    add_library(rangeline_${name} INTERFACE)
    target_include_directories(rangeline_${name} INTERFACE ${root})
    target_link_libraries(rangeline_${name} INTERFACE ${LAYER_LINKS})
  endif()
endfunction()
