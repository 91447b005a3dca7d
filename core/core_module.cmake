# ebbline_core_module(name SOURCES ... [USES ...] [LIBRARIES ...])
#
# One folder of core/ as one static library (header-only if it has no SOURCES).
# EBBLINE_CORE_LAYERS is the architecture: a module may use only modules named before it.
# Whoever needs an edge upwards moves the code, not the list. tests/boundaries checks that the
# #include lines keep to what is declared here. LIBRARIES are third-party, linked privately.
set(EBBLINE_CORE_LAYERS
    result clock bytes crypto store envelope mailbox
    recovery photos statistics anaesthesia aftercare warnings
    bands curves triggers rehearsal learning
    records journal vault pairing sync triage exchange patient desk)

function(ebbline_core_module name)
    cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "SOURCES;USES;LIBRARIES")

    list(FIND EBBLINE_CORE_LAYERS ${name} own)
    if(own EQUAL -1)
        message(FATAL_ERROR "core/${name} is missing from EBBLINE_CORE_LAYERS")
    endif()
    foreach(used IN LISTS arg_USES)
        list(FIND EBBLINE_CORE_LAYERS ${used} other)
        if(other EQUAL -1 OR NOT other LESS own)
            message(FATAL_ERROR "core/${name} may not use core/${used}: only modules listed before it")
        endif()
    endforeach()
    foreach(library IN LISTS arg_LIBRARIES)
        if(library MATCHES "^Qt")
            message(FATAL_ERROR "core/${name} links ${library}: core is free of Qt")
        endif()
    endforeach()
    set_property(GLOBAL APPEND_STRING PROPERTY EBBLINE_CORE_EDGES "${name}:${arg_USES}\n")

    list(TRANSFORM arg_USES PREPEND core::)
    if(arg_SOURCES)
        add_library(core_${name} STATIC ${arg_SOURCES})
        target_link_libraries(core_${name} PUBLIC ${arg_USES} PRIVATE ${arg_LIBRARIES})
        target_include_directories(core_${name} PUBLIC ${PROJECT_SOURCE_DIR})
        project_warnings(core_${name})
        ebbline_precompiled(core_${name} plain)
    else()
        add_library(core_${name} INTERFACE)
        target_link_libraries(core_${name} INTERFACE ${arg_USES})
        target_include_directories(core_${name} INTERFACE ${PROJECT_SOURCE_DIR})
    endif()
    add_library(core::${name} ALIAS core_${name})
endfunction()
