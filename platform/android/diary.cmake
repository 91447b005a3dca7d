# ebbline_android_diary(target): what makes an Android package of the diary. Versions of Android: those
# that Qt 6.8 supports (doc.qt.io/qt-6.8, "Mobile Development": Android 9, API level 28, to 15, API level 35).
# The target stays at 34: from 35 on pages reach under the system's bars, which nobody has looked at yet.
function(ebbline_android_diary target)
    math(EXPR code "${PROJECT_VERSION_MAJOR} * 10000 + ${PROJECT_VERSION_MINOR} * 100 + ${PROJECT_VERSION_PATCH}")
    set_target_properties(${target} PROPERTIES
        QT_ANDROID_PACKAGE_SOURCE_DIR ${PROJECT_SOURCE_DIR}/platform/android/package
        QT_ANDROID_MIN_SDK_VERSION 28
        QT_ANDROID_TARGET_SDK_VERSION 34
        QT_ANDROID_VERSION_NAME ${PROJECT_VERSION}
        QT_ANDROID_VERSION_CODE ${code})
endfunction()
