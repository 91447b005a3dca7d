# The one list of warnings, on every target of ours. For a QML module call it after
# qt_add_qml_module(): Qt compiles the C++ that it makes from our QML into the same target,
# and that code is not ours to mend.
function(project_warnings target)
    target_compile_options(${target} PRIVATE
        -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wold-style-cast
        -Wnon-virtual-dtor -Woverloaded-virtual -Wundef
        # Clang's standard library headers of g++ use what they deprecate themselves.
        $<$<CXX_COMPILER_ID:Clang>:-Wno-deprecated-declarations>
        $<$<BOOL:${EBBLINE_WARNINGS_ARE_ERRORS}>:-Werror>)
    get_target_property(sources ${target} SOURCES)
    list(FILTER sources INCLUDE REGEX "/(qmlcache|\\.rcc|.*_qmltyperegistrations)")
    set_source_files_properties(${sources} PROPERTIES COMPILE_OPTIONS -w)
endfunction()
