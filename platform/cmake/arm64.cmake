# Toolchain: Debian's cross compiler for arm64, libraries of Debian's arm64 packages beside those of the machine, and what
# is built started under emulation. platform/debian/arm64.sh puts all of them into a clean root.
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
set(CMAKE_CXX_COMPILER aarch64-linux-gnu-g++)
find_program(EBBLINE_EMULATOR NAMES qemu-aarch64-static qemu-aarch64 REQUIRED)
set(CMAKE_CROSSCOMPILING_EMULATOR ${EBBLINE_EMULATOR})
# Without this pkg-config names the machine's own libraries.
set(ENV{PKG_CONFIG_LIBDIR} /usr/lib/aarch64-linux-gnu/pkgconfig:/usr/share/pkgconfig)
