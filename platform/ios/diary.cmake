# ebbline_ios_diary(target): what makes an iOS bundle of the diary. iOS 16 is the oldest that Qt 6.8 supports
# (doc.qt.io/qt-6.8, "Mobile Development"). The team that signs is given with -DEBBLINE_IOS_TEAM.
set(EBBLINE_IOS_TEAM "" CACHE STRING "Apple developer team that signs the diary")
function(ebbline_ios_diary target)
    set(folder ${PROJECT_SOURCE_DIR}/platform/ios)
    file(GLOB words CONFIGURE_DEPENDS ${folder}/*.lproj/InfoPlist.strings)
    foreach(file IN LISTS words)
        cmake_path(GET file PARENT_PATH language)
        cmake_path(GET language FILENAME language)
        set_source_files_properties(${file} PROPERTIES MACOSX_PACKAGE_LOCATION Resources/${language})
    endforeach()
    set(papers ${folder}/PrivacyInfo.xcprivacy ${folder}/Assets.xcassets)
    set_source_files_properties(${papers} PROPERTIES MACOSX_PACKAGE_LOCATION Resources)
    target_sources(${target} PRIVATE ${words} ${papers})
    set_target_properties(${target} PROPERTIES
        MACOSX_BUNDLE TRUE
        MACOSX_BUNDLE_INFO_PLIST ${folder}/Info.plist
        MACOSX_BUNDLE_GUI_IDENTIFIER invalid.ebbline.diary
        MACOSX_BUNDLE_BUNDLE_NAME Ebbline
        MACOSX_BUNDLE_BUNDLE_VERSION ${PROJECT_VERSION}
        MACOSX_BUNDLE_SHORT_VERSION_STRING ${PROJECT_VERSION}
        XCODE_ATTRIBUTE_PRODUCT_BUNDLE_IDENTIFIER invalid.ebbline.diary
        XCODE_ATTRIBUTE_IPHONEOS_DEPLOYMENT_TARGET 16.0
        XCODE_ATTRIBUTE_CODE_SIGN_ENTITLEMENTS ${folder}/Ebbline.entitlements
        XCODE_ATTRIBUTE_ASSETCATALOG_COMPILER_APPICON_NAME AppIcon
        XCODE_ATTRIBUTE_DEVELOPMENT_TEAM "${EBBLINE_IOS_TEAM}")
endfunction()
