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
