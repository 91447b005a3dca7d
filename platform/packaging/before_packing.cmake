# Read by CPack before it packs. Without this program it would only warn, and make packages that depend on nothing.
find_program(DPKG_SHLIBDEPS dpkg-shlibdeps)
if(NOT DPKG_SHLIBDEPS)
    message(FATAL_ERROR "dpkg-shlibdeps is missing, which tells what a package depends on: install dpkg-dev")
endif()
