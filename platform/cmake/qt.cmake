# Qt 6.4 (Debian 12) to 6.8 (Debian 13), the same sources for both.
find_package(Qt6 6.4 REQUIRED COMPONENTS Core Gui Widgets Network Qml Quick QuickControls2 Svg Charts
    Multimedia LinguistTools)
if(NOT EBBLINE_PHONE)
    find_package(Qt6 6.4 REQUIRED COMPONENTS DBus PrintSupport Test)
endif()
qt_standard_project_setup()
if(POLICY QTP0001)
    qt_policy(SET QTP0001 NEW)
endif()
if(POLICY QTP0004)
    qt_policy(SET QTP0004 NEW)
endif()

# ebbline_compile_qml_together(target): what Qt makes of our QML is compiled a dozen files at once: nearly all of the time
# for one goes into the headers that they share. Call it after project_warnings(), whose silence for these files is said
# inside of them: a file with options of its own is compiled alone.
function(ebbline_compile_qml_together target)
    get_target_property(sources ${target} SOURCES)
    list(FILTER sources INCLUDE REGEX "/qmlcache/.*_qml\\.cpp$")
    set(count 0)
    foreach(source IN LISTS sources)
        math(EXPR group "${count} / 12")
        set_source_files_properties(${source} PROPERTIES UNITY_GROUP qml${group})
        set_property(SOURCE ${source} PROPERTY COMPILE_OPTIONS)
        math(EXPR count "${count} + 1")
    endforeach()
    set(silence "")
    foreach(warning IN ITEMS pedantic shadow conversion float-conversion old-style-cast sign-conversion unused-variable unused-parameter)
        string(APPEND silence "#pragma GCC diagnostic ignored \"-W${warning}\"\n")
    endforeach()
    set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP
        UNITY_BUILD_CODE_BEFORE_INCLUDE "${silence}")
endfunction()
