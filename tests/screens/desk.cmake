if(NOT TARGET ebbline_desk)
    return()
endif()
add_library(demo_clinic STATIC demo_clinic.h demo_clinic.cpp)
target_link_libraries(demo_clinic PUBLIC core::exchange core::mailbox core::patient ebbline_desk ebbline_deskplugin ebbline_faceplugin ebbline_chartsplugin
    ebbline_noticesplugin ebbline_controlsplugin ebbline_themeplugin ebbline_fonts)
project_warnings(demo_clinic)

add_executable(desk_shots desk_shots.cpp desk_pages.h)
target_link_libraries(desk_shots PRIVATE demo_clinic screen_check)
project_warnings(desk_shots)

add_executable(desk_screens_test ${PROJECT_SOURCE_DIR}/tests/app/app_main.cpp desk_screens_test.cpp desk_first_page_test.cpp desk_pages.h)
target_link_libraries(desk_screens_test PRIVATE demo_clinic screen_check Catch2::Catch2)
project_warnings(desk_screens_test)
ebbline_precompiled(desk_screens_test qt_tests)
catch_discover_tests(desk_screens_test TEST_PREFIX "desk screens: "
    PROPERTIES LABELS screens ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software" TIMEOUT 300)

add_executable(desk_flows_test ${PROJECT_SOURCE_DIR}/tests/app/app_main.cpp desk_flows_test.cpp desk_keep_test.cpp desk_treatment_test.cpp hands.h hands.cpp)
target_link_libraries(desk_flows_test PRIVATE demo_clinic screen_check Catch2::Catch2)
project_warnings(desk_flows_test)
ebbline_precompiled(desk_flows_test qt_tests)
catch_discover_tests(desk_flows_test TEST_PREFIX "desk flows: "
    PROPERTIES LABELS screens ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software" TIMEOUT 300)
