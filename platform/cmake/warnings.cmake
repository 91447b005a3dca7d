# The one list of warnings, on every target of ours. For a QML module call it after
# qt_add_qml_module(): Qt compiles the C++ that it makes from our QML into the same target,
# and that code is not ours to mend.
function(project_warnings target)
    target_compile_options(${target} PRIVATE
        -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wold-style-cast
        -Wnon-virtual-dtor -Woverloaded-virtual -Wundef
        # Clang's standard library headers of g++ use what they deprecate themselves.
        $<$<CXX_COMPILER_ID:Clang>:-Wno-deprecated-declarations>
        $<$<BOOL:${EBBLINE_WARNINGS_ARE_ERRORS}>:-Werror>
        # At -O3, as the release is built, g++ 12 takes the joining of two short strings for a copy of more bytes than there
        # are over itself: a false alarm of its own library's code, still said and no error.
        $<$<AND:$<CONFIG:Release>,$<CXX_COMPILER_ID:GNU>,$<VERSION_LESS:$<CXX_COMPILER_VERSION>,13>>:-Wno-error=restrict>
        # With common headers read once g++ forgets whose they are, and raises the like over joined strings.
        $<$<AND:$<BOOL:${EBBLINE_PRECOMPILED}>,$<CXX_COMPILER_ID:GNU>>:-Wno-array-bounds;-Wno-restrict;-Wno-stringop-overflow>)
    get_target_property(sources ${target} SOURCES)
    list(FILTER sources INCLUDE REGEX "/(qmlcache|\\.rcc|.*_qmltyperegistrations)")
    set_source_files_properties(${sources} PROPERTIES COMPILE_OPTIONS -w)
endfunction()
