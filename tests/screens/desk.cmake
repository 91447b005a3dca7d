if(NOT TARGET ebbline_desk)
    return()
endif()
add_library(demo_clinic STATIC demo_clinic.h demo_clinic.cpp)
target_link_libraries(demo_clinic PUBLIC ebbline_desk ebbline_deskplugin ebbline_faceplugin ebbline_chartsplugin
    ebbline_controlsplugin ebbline_themeplugin ebbline_fonts)
project_warnings(demo_clinic)

add_executable(desk_shots desk_shots.cpp desk_pages.h)
target_link_libraries(desk_shots PRIVATE demo_clinic screen_check)
project_warnings(desk_shots)
