if(NOT TARGET ebbline_diary)
    return()
endif()
add_library(demo_patient STATIC demo_patient.h demo_patient.cpp)
target_link_libraries(demo_patient PUBLIC core::mailbox core::desk ebbline_diary ebbline_diaryplugin ebbline_chartsplugin
    ebbline_faceplugin ebbline_noticesplugin ebbline_controlsplugin ebbline_themeplugin ebbline_fonts PRIVATE ext::qrencode)
project_warnings(demo_patient)

add_executable(diary_shots diary_shots.cpp diary_pages.h)
target_link_libraries(diary_shots PRIVATE demo_patient screen_check)
project_warnings(diary_shots)

add_executable(diary_screens_test ${PROJECT_SOURCE_DIR}/tests/app/app_main.cpp diary_screens_test.cpp first_page_test.cpp diary_pages.h)
target_link_libraries(diary_screens_test PRIVATE demo_patient screen_check Catch2::Catch2)
project_warnings(diary_screens_test)
ebbline_precompiled(diary_screens_test qt_tests)
catch_discover_tests(diary_screens_test TEST_PREFIX "diary screens: "
    PROPERTIES LABELS screens ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software" TIMEOUT 600)

add_executable(diary_flows_test ${PROJECT_SOURCE_DIR}/tests/app/app_main.cpp diary_flows_test.cpp diary_day_flows_test.cpp
    guide_flow_test.cpp join_flow_test.cpp in_sight_test.cpp hands.h hands.cpp diary_hands.h diary_hands.cpp theme_test.cpp told_test.cpp)
target_compile_definitions(diary_flows_test PRIVATE EBBLINE_DOCS="${PROJECT_SOURCE_DIR}/docs")
target_link_libraries(diary_flows_test PRIVATE demo_patient screen_check Catch2::Catch2)
project_warnings(diary_flows_test)
ebbline_precompiled(diary_flows_test qt_tests)
catch_discover_tests(diary_flows_test TEST_PREFIX "diary flows: "
    PROPERTIES LABELS screens ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software" TIMEOUT 300)
