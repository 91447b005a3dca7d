# Third-party libraries, each as one target. Only the module named beside it links it.
find_package(Threads REQUIRED)
find_package(PkgConfig REQUIRED)

# core/crypto
pkg_check_modules(SODIUM REQUIRED IMPORTED_TARGET libsodium>=1.0.18)
add_library(ext::sodium ALIAS PkgConfig::SODIUM)

# core/store. Static, with its symbols kept to ourselves: Qt's own database plugin may bring
# another SQLite into the process, and the wrong one would write plaintext.
find_package(OpenSSL REQUIRED)
pkg_check_modules(SQLCIPHER REQUIRED sqlcipher)
find_library(EBBLINE_SQLCIPHER_ARCHIVE NAMES libsqlcipher.a REQUIRED)
add_library(ext_sqlcipher INTERFACE)
target_include_directories(ext_sqlcipher SYSTEM INTERFACE ${SQLCIPHER_INCLUDE_DIRS})
target_compile_definitions(ext_sqlcipher INTERFACE SQLITE_HAS_CODEC)
target_link_libraries(ext_sqlcipher INTERFACE ${EBBLINE_SQLCIPHER_ARCHIVE} OpenSSL::Crypto
    Threads::Threads m ${CMAKE_DL_LIBS})
target_link_options(ext_sqlcipher INTERFACE -Wl,--exclude-libs,libsqlcipher.a)
add_library(ext::sqlcipher ALIAS ext_sqlcipher)

# core/records
find_package(cereal REQUIRED)
add_library(ext_cereal INTERFACE)
target_include_directories(ext_cereal SYSTEM INTERFACE $<TARGET_PROPERTY:cereal::cereal,INTERFACE_INCLUDE_DIRECTORIES>)
target_compile_definitions(ext_cereal INTERFACE CEREAL_THREAD_SAFE=1)
add_library(ext::cereal ALIAS ext_cereal)

# core/aftercare
find_package(date REQUIRED)
add_library(ext::date_tz ALIAS date::date-tz)

# core/statistics (Boost.Math, Eigen), platform/server (Asio, Beast)
find_package(Boost 1.81 REQUIRED)
add_library(ext::boost ALIAS Boost::headers)
find_package(Eigen3 3.4 REQUIRED NO_MODULE)
add_library(ext::eigen ALIAS Eigen3::Eigen)

# core/sync: envelopes are compressed before they are sealed
pkg_check_modules(ZSTD REQUIRED IMPORTED_TARGET libzstd)
add_library(ext::zstd ALIAS PkgConfig::ZSTD)

# core/exchange, app/tool
find_package(nlohmann_json REQUIRED)
add_library(ext::json ALIAS nlohmann_json::nlohmann_json)

# platform/camera: QR codes
pkg_check_modules(ZXING REQUIRED IMPORTED_TARGET zxing)
add_library(ext::zxing ALIAS PkgConfig::ZXING)

# A phone needs no more.
if(EBBLINE_PHONE)
    return()
endif()

# app/tool and app/hub
find_package(CLI11 REQUIRED)
add_library(ext::cli ALIAS CLI11::CLI11)

# app/desk: QR codes to show
pkg_check_modules(QRENCODE REQUIRED IMPORTED_TARGET libqrencode)
add_library(ext::qrencode ALIAS PkgConfig::QRENCODE)

# platform/postgres
pkg_check_modules(LIBPQ REQUIRED IMPORTED_TARGET libpq>=15)
add_library(ext::libpq ALIAS PkgConfig::LIBPQ)

# platform/linux: the keyring of a session. It brings Qt, so it is looked for where there is Qt.
if(EBBLINE_APPS)
    find_package(Qt6Keychain REQUIRED)
    add_library(ext::keychain ALIAS qt6keychain)
endif()
