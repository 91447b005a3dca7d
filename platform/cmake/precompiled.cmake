# What most files of a kind include is read by the compiler once and not once for every file (the dev preset). Every file
# still includes what it uses: the other presets build without this, and release is the one that tells.
#
# ebbline_precompiled(target kind): kind is plain, tests, qt or qt_tests. Files of one kind are compiled with the same
# options, which g++ asks of those who share such a header; a target with options of its own is not given one. What tells its
# targets apart by macros (QTest does) stays out.
option(EBBLINE_PRECOMPILED "Read common headers once" OFF)

set(EBBLINE_PRECOMPILED_plain
    <algorithm> <array> <chrono> <cmath> <cstdint> <expected> <functional> <map> <memory> <optional> <set> <span> <string>
    <string_view> <utility> <variant> <vector>)
set(EBBLINE_PRECOMPILED_tests ${EBBLINE_PRECOMPILED_plain}
    <catch2/catch_test_macros.hpp> <catch2/generators/catch_generators.hpp>
    <catch2/matchers/catch_matchers_floating_point.hpp> <rapidcheck.h>)
set(EBBLINE_PRECOMPILED_qt ${EBBLINE_PRECOMPILED_plain}
    <QCoreApplication> <QDateTime> <QLocale> <QObject> <QString> <QStringList> <QVariant> <QQmlEngine>)
set(EBBLINE_PRECOMPILED_qt_tests ${EBBLINE_PRECOMPILED_plain}
    <QCoreApplication> <QDateTime> <QLocale> <QObject> <QString> <QStringList> <QVariant>
    <catch2/catch_test_macros.hpp> <catch2/generators/catch_generators.hpp> <QDir> <QFile> <QTemporaryDir>)

set(EBBLINE_PRECOMPILED_plain_LIBRARIES "")
set(EBBLINE_PRECOMPILED_tests_LIBRARIES Catch2::Catch2)
set(EBBLINE_PRECOMPILED_qt_LIBRARIES Qt6::Qml)
set(EBBLINE_PRECOMPILED_qt_tests_LIBRARIES Qt6::Core Catch2::Catch2)

function(ebbline_precompiled target kind)
    if(NOT EBBLINE_PRECOMPILED)
        return()
    endif()
    set(shared precompiled_${kind})
    if(NOT TARGET ${shared})
        file(CONFIGURE OUTPUT ${CMAKE_BINARY_DIR}/${shared}.cpp CONTENT "" @ONLY)
        add_library(${shared} OBJECT ${CMAKE_BINARY_DIR}/${shared}.cpp)
        set_target_properties(${shared} PROPERTIES AUTOMOC OFF AUTORCC OFF AUTOUIC OFF)
        target_link_libraries(${shared} PRIVATE ${EBBLINE_PRECOMPILED_${kind}_LIBRARIES})
        project_warnings(${shared})
        target_precompile_headers(${shared} PRIVATE ${EBBLINE_PRECOMPILED_${kind}})
    endif()
    target_precompile_headers(${target} REUSE_FROM ${shared})
endfunction()
